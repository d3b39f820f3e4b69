import { describe, expect, it } from 'vitest';
import { withLimit } from '#core/protocol/limits';
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
    expect(mergeShared('patient', 'newer', [here, there], by)).toEqual({ counts: there, beside: null });
  });

  it('is the same on both devices, at one and the same time too', () => {
    for (const time of ['2026-03-04T04:05:06.000Z', '2026-03-05T04:05:06.000Z']) {
      const here = { ...patient, goals: 'Stairs', changedAt: '2026-03-04T04:05:06.000Z' };
      const there = { ...patient, goals: 'Running', restrictions: 'None', changedAt: time };
      const { counts: merged } = mergeShared('patient', 'apart', [here, there], by);
      const { counts: elsewhere } = mergeShared('patient', 'apart', [there, here], swapped);
      expect(contentHash('patient', merged)).toBe(contentHash('patient', elsewhere));
      expect(merged.alsoNoted).toHaveLength(1);
    }
  });

  const settled = (who: string, at = '2026-04-06T07:08:09.000Z') => ({
    visitId: smallSession().id,
    by: 'therapist' as const,
    who,
    at,
  });

  it('keeps the session that ended later where both were signed at once, with what was settled in either', () => {
    const here = { ...smallSession(), settles: [settled('AB')] };
    const there = { ...smallSession(), endedAt: null, remark: 'Broken off', settles: [settled('KN')] };
    for (const [both, initials] of [
      [[here, there], by],
      [[there, here], swapped],
    ] as const) {
      const { counts, beside } = mergeShared('session', 'apart', both, initials);
      expect(counts.remark).toBe(here.remark);
      expect(counts.settles.map(({ who }) => who).sort()).toEqual(['AB', 'KN']);
      expect(beside).toEqual({
        kind: 'visit',
        of: here.id,
        by: 'KN',
        text: JSON.stringify({ ...there, settles: [] }),
      });
    }
  });

  it('keeps the session that was signed last, and nothing beside it where only what was settled differs', () => {
    const here = { ...smallSession(), settles: [settled('AB', '2026-04-07T07:08:09.000Z')] };
    const there = {
      ...smallSession(),
      remark: 'Later',
      endedAt: '2026-04-30T07:08:09.000Z',
      settles: [settled('KN')],
    };
    expect(mergeShared('session', 'apart', [here, there], by)).toMatchObject({
      counts: { remark: here.remark },
      beside: { by: 'KN' },
    });
    const same = { ...smallSession(), settles: [settled('KN')] };
    expect(mergeShared('session', 'apart', [here, same], by).beside).toBeNull();
  });

  it('comes to the same session whichever of three versions meet first', () => {
    const versions = [
      { ...smallSession(), remark: 'A', settles: [settled('AB')] },
      { ...smallSession(), remark: 'B' },
      { ...smallSession(), remark: 'C', settles: [settled('KN')] },
    ];
    const orders = [
      [0, 1, 2],
      [0, 2, 1],
      [1, 0, 2],
      [1, 2, 0],
      [2, 0, 1],
      [2, 1, 0],
    ];
    const found = orders.map((order) => {
      const beside: string[] = [];
      const [first, ...rest] = order.map((index) => versions[index]!);
      const whole = rest.reduce((here, there) => {
        const both = mergeShared('session', 'apart', [here, there], by);
        beside.push((JSON.parse(both.beside!.text) as { remark: string }).remark);
        return both.counts;
      }, first!);
      return JSON.stringify([contentHash('session', whole), whole.remark, beside.sort()]);
    });
    expect(new Set(found).size).toBe(1);
    expect(found[0]).toContain('"C",["A","B"]');
  });

  it('keeps the remarks of both on a recording', () => {
    const remark = (atMs: number, text: string) => ({ atMs, text, by: 'AB', at: '2026-04-06T07:08:09.000Z' });
    const review = { limitsSet: [], cues: [], reviewed: null };
    const here = { ...smallRecording(), review: { ...review, remarks: [remark(100, 'Here')] } };
    const there = { ...smallRecording(), review: { ...review, remarks: [remark(200, 'There')] } };
    const { counts: merged } = mergeShared('recording', 'apart', [here, there], by);
    expect(merged.review!.remarks.map(({ text }) => text).sort()).toEqual(['Here', 'There']);
    expect(mergeShared('recording', 'apart', [there, here], swapped)).toEqual({
      counts: merged,
      beside: null,
    });
  });

  it('keeps all limits that were set on a recording, the latest in force, and both remarks on the whole set', () => {
    const { limits } = smallRecording();
    const [setEarlier, setLater] = [
      { limits: withLimit(limits, 'knee-angle', 'most', 7), by: 'AB', at: '2026-04-06T07:08:09.000Z' },
      { limits: withLimit(limits, 'knee-angle', 'most', 9), by: 'KN', at: '2026-04-07T07:08:09.000Z' },
    ];
    const remark = (by: string) => ({ atMs: null, text: 'A remark', by, at: '2026-04-06T07:08:09.000Z' });
    const reviewed = { by: 'AB', at: '2026-04-08T07:08:09.000Z' };
    const here = {
      ...smallRecording(),
      limits: setEarlier.limits,
      review: { limitsSet: [setEarlier], remarks: [remark('AB')], cues: [], reviewed },
    };
    const there = {
      ...smallRecording(),
      limits: setLater.limits,
      review: { limitsSet: [setLater], remarks: [remark('KN')], cues: [], reviewed: null },
    };
    const { counts } = mergeShared('recording', 'apart', [here, there], by);
    expect(counts.limits).toEqual(setLater.limits);
    expect(counts.review!.limitsSet).toEqual([setEarlier, setLater]);
    expect(counts.review!.remarks).toEqual([remark('AB'), remark('KN')]);
    expect(counts.review!.reviewed).toEqual(reviewed);
    expect(mergeShared('recording', 'apart', [there, here], swapped).counts).toEqual(counts);
  });

  it('keeps corrections and cues of the review that was signed earlier beside the later one, and says whose', () => {
    const excluded = (atMs: number, who: string) => ({
      change: { kind: 'exclude' as const, atMs, reason: 'Lost balance' },
      by: who,
      at: '2026-04-06T07:08:09.000Z',
    });
    const reviewed = (who: string, day: number) => ({ by: who, at: `2026-04-0${day}T07:08:09.000Z` });
    const review = { limitsSet: [], remarks: [] };
    const here = {
      ...smallRecording(),
      corrections: [excluded(2000, 'AB')],
      review: { ...review, cues: [{ atMs: 2000, text: 'Slower' }], reviewed: reviewed('AB', 7) },
    };
    const there = {
      ...smallRecording(),
      corrections: [excluded(5000, 'KN')],
      review: { ...review, cues: [], reviewed: reviewed('KN', 8) },
    };
    const { counts, beside } = mergeShared('recording', 'apart', [here, there], by);
    expect(counts.corrections).toEqual(there.corrections);
    expect(counts.review!.cues).toEqual(here.review.cues);
    expect(beside).toMatchObject({ kind: 'review', of: here.id, by: 'AB' });
    expect(JSON.parse(beside!.text)).toEqual({
      createdAt: '2024-03-05T07:08:09.010Z',
      task: 'split-stance-sit-to-stand',
      side: 'right',
      corrections: here.corrections,
      cues: here.review.cues,
    });
    expect(mergeShared('recording', 'apart', [there, here], swapped)).toEqual({ counts, beside });
    // What it is made into brings nothing more to either.
    expect(mergeShared('recording', 'apart', [here, counts], by)).toEqual({ counts, beside });
    expect(mergeShared('recording', 'apart', [there, counts], swapped)).toEqual({ counts, beside: null });
  });

  it('keeps no review beside one that has the same corrections, or more', () => {
    const correction = (atMs: number) => ({
      change: { kind: 'exclude' as const, atMs, reason: 'Lost balance' },
      by: 'AB',
      at: '2026-04-06T07:08:09.000Z',
    });
    const reviewed = { by: 'AB', at: '2026-04-07T07:08:09.000Z' };
    const review = { limitsSet: [], remarks: [], cues: [], reviewed };
    const here = { ...smallRecording(), corrections: [correction(2000), correction(5000)], review };
    const there = { ...smallRecording(), corrections: [correction(2000)] };
    expect(mergeShared('recording', 'apart', [here, there], by).beside).toBeNull();
    expect(mergeShared('recording', 'apart', [there, here], swapped).beside).toBeNull();
  });

  it('keeps the plan that was saved later', () => {
    const plan = (savedAt: string, text: string) => ({ id: 'a', savedAt, text });
    const [here, there] = [plan('2026-03-04T04:05:06.000Z', '1'), plan('2026-03-05T04:05:06.000Z', '2')];
    const beside = { kind: 'plan', of: 'a', by: 'AB', text: '1' };
    expect(mergeShared('plan', 'apart', [here, there], by)).toEqual({ counts: there, beside });
    expect(mergeShared('plan', 'apart', [there, here], swapped)).toEqual({ counts: there, beside });
  });
});
