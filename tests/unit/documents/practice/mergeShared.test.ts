import { describe, expect, it } from 'vitest';
import { newPatient } from '#documents/patient/newPatient';
import { contentHash } from '#documents/practice/contentHash';
import { mergeShared } from '#documents/practice/mergeShared';
import { standingOf } from '#documents/practice/standingOf';
import { smallRecording } from '../../../support/smallRecording';
import { smallSession } from '../../../support/smallSession';

const patient = newPatient(
  'Blue Heron 7',
  '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66',
  '2026-02-01T04:05:06.000Z',
);
const by = { here: 'AB', there: 'KN' };
const swapped = { here: 'KN', there: 'AB' };
const pause = (id: string, at: string) => ({
  id: `00000000-0000-4000-8000-00000000000${id}`,
  at,
  by: 'AB',
  withdrawn: null,
  from: '2026-02-01',
  to: null,
  reason: 'ill',
  changed: null,
});

describe('contentHash(kind, document)', () => {
  it('does not change with the order of fields and entries, or with the id of a record', () => {
    const [one, two] = [pause('1', '2026-02-01T04:05:06.000Z'), pause('2', '2026-02-02T04:05:06.000Z')];
    const reordered = Object.fromEntries(Object.entries(patient).reverse());
    expect(contentHash('patient', { ...patient, pauses: [one, two] })).toBe(
      contentHash('patient', { ...reordered, id: 'another', pauses: [two, one] }),
    );
  });

  it('changes with everything else, and with the order of sets', () => {
    const hash = contentHash('patient', patient);
    expect(contentHash('patient', { ...patient, goals: 'Stairs' })).not.toBe(hash);
    expect(contentHash('plan', patient)).not.toBe(hash);
    const session = smallSession();
    expect(contentHash('session', { ...session, sets: [...session.sets].reverse() })).not.toBe(
      contentHash('session', session),
    );
  });
});

describe('standingOf(here, there)', () => {
  it.each([
    ['same', 'b', ['a'], 'b', []],
    ['older', 'b', ['a'], 'a', []],
    ['newer', 'b', ['a'], 'c', ['a', 'b']],
    ['apart', 'b', ['a'], 'c', ['a']],
  ] as const)('is %s', (standing, content, ancestors, arrived, theirs) => {
    expect(standingOf({ content, ancestors }, { content: arrived, ancestors: theirs })).toBe(standing);
  });
});

describe('mergeShared(kind, standing, [here, there], by)', () => {
  it('takes what was made from the one here, whatever the clocks say, and notes nothing beside it', () => {
    const here = { ...patient, goals: 'Stairs', changedAt: '2026-03-05T04:05:06.000Z' };
    const there = { ...patient, goals: 'Running', changedAt: '2026-03-04T04:05:06.000Z' };
    expect(mergeShared('patient', 'newer', [here, there], by)).toEqual(there);
  });

  it('is the same on both devices, at one and the same time too', () => {
    for (const time of ['2026-03-04T04:05:06.000Z', '2026-03-05T04:05:06.000Z']) {
      const here = { ...patient, goals: 'Stairs', changedAt: '2026-03-04T04:05:06.000Z' };
      const there = { ...patient, goals: 'Running', restrictions: 'None', changedAt: time };
      const merged = mergeShared('patient', 'apart', [here, there], by);
      const elsewhere = mergeShared('patient', 'apart', [there, here], swapped);
      expect(contentHash('patient', merged)).toBe(contentHash('patient', elsewhere));
      expect(merged.alsoNoted).toHaveLength(1);
    }
  });

  it('keeps the session that ended later, with what was settled in either', () => {
    const settled = (who: string) => ({
      visitId: smallSession().id,
      by: 'therapist' as const,
      who,
      at: '2026-04-06T07:08:09.000Z',
    });
    const here = { ...smallSession(), settles: [settled('AB')] };
    const there = { ...smallSession(), endedAt: null, remark: 'Broken off', settles: [settled('KN')] };
    for (const both of [[here, there] as const, [there, here] as const]) {
      const { remark, settles } = mergeShared('session', 'apart', both, by);
      expect(remark).toBe(here.remark);
      expect(settles.map(({ who }) => who).sort()).toEqual(['AB', 'KN']);
    }
  });

  it('keeps the remarks of both on a recording', () => {
    const remark = (atMs: number, text: string) => ({ atMs, text, by: 'AB', at: '2026-04-06T07:08:09.000Z' });
    const review = { limitsSet: [], cues: [], reviewed: null };
    const here = { ...smallRecording(), review: { ...review, remarks: [remark(100, 'Here')] } };
    const there = { ...smallRecording(), review: { ...review, remarks: [remark(200, 'There')] } };
    const merged = mergeShared('recording', 'apart', [here, there], by);
    expect(merged.review!.remarks.map(({ text }) => text).sort()).toEqual(['Here', 'There']);
    expect(mergeShared('recording', 'apart', [there, here], swapped)).toEqual(merged);
  });

  it('keeps the plan that was saved later', () => {
    const plan = (savedAt: string, text: string) => ({ id: 'a', savedAt, text });
    const [here, there] = [plan('2026-03-04T04:05:06.000Z', '1'), plan('2026-03-05T04:05:06.000Z', '2')];
    expect(mergeShared('plan', 'apart', [here, there], by)).toBe(there);
    expect(mergeShared('plan', 'apart', [there, here], by)).toBe(there);
  });
});
