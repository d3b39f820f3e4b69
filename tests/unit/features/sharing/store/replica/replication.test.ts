import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { storageProblem } from '#device/storage/storageProblem';
import { readOtherReview } from '#documents/patient/otherReview';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { reopeningsOf } from '#documents/patient/reopeningsOf';
import { contentHash } from '#documents/practice/contentHash';
import { pieceBytes } from '#documents/practice/sharedPiece';
import { emptyReview } from '#documents/recording/reviewSchema';
import { readOtherVersions } from '#features/patients/store/readOtherVersions';
import { sealShared } from '#features/sharing/store/replica/sealShared';
import { newKeyPair } from '#shell/seal';
import { startReplicaServer, type ReplicaServer } from '#tools/commands/tools/practice/startReplicaServer';
import { eachWithServer } from '../../../../../support/practice/eachWithServer';
import { inventedPatient, inventedSession } from '../../../../../support/practice/invented';
import {
  practiceDevice,
  practiceOf,
  type PracticeDevice,
} from '../../../../../support/practice/practiceDevice';
import { documentsOn, putOn } from '../../../../../support/practice/serverDocuments';
import { smallPlan } from '../../../../../support/smallPlan';
import { smallRecording } from '../../../../../support/smallRecording';
import { testLog } from '../../../../../support/testLog';

let server: ReplicaServer;
eachWithServer((one) => (server = one));

const heron = inventedPatient('Blue Heron 7', { goals: 'Stairs without the rail' });
const patientsOf = async ({ repository }: PracticeDevice) => (await repository.patients.list()).found;
const sessionsOf = async ({ repository }: PracticeDevice) => (await repository.sessions.list()).found;
const only = async (device: PracticeDevice) => {
  const found = await patientsOf(device);
  expect(found).toHaveLength(1);
  return found[0]!;
};

describe('sharing within a practice, against a server of the replication protocol', () => {
  it('brings a patient with sessions and plans to a colleague, and later changes both ways', async () => {
    const [ab, kn] = (await practiceOf('AB', 'KN')) as [PracticeDevice, PracticeDevice];
    const session = inventedSession('Blue Heron 7');
    await ab.repository.patients.add(heron);
    await ab.repository.sessions.save(session);
    await ab.repository.plans.save('a-plan', '{"patient":"Blue Heron 7"}', '2026-02-03T04:05:06.000Z');
    await ab.exchange(server);
    await kn.exchange(server);
    expect(await only(kn)).toEqual(heron);
    expect(await sessionsOf(kn)).toEqual([session]);
    expect((await kn.repository.plans.list()).found).toMatchObject([{ id: 'a-plan' }]);

    await kn.repository.patients.update(heron.id, (kept) => ({
      ...kept,
      goals: 'Running',
      changedAt: '2026-03-01T04:05:06.000Z',
    }));
    await kn.exchange(server);
    await ab.exchange(server);
    const changed = await only(ab);
    expect(changed.goals).toBe('Running');
    expect(changed.alsoNoted).toEqual([]);
  });

  it('keeps what both noted where both changed a record apart, the same on both', async () => {
    const [ab, kn] = await two();
    await ab.repository.patients.add(heron);
    await ab.exchange(server);
    await kn.exchange(server);
    await note(ab, { goals: 'Running', restrictions: 'No stairs', changedAt: '2026-03-01T04:05:06.000Z' });
    await note(kn, { goals: 'Skiing', changedAt: '2026-03-02T04:05:06.000Z' });
    await kn.repository.patients.update(heron.id, (kept) => ({ ...kept, plans: [given] }));
    for (let round = 0; round < 3; round++) {
      await ab.exchange(server);
      await kn.exchange(server);
    }
    const [here, there] = [await only(ab), await only(kn)];
    expect(contentHash('patient', here)).toBe(contentHash('patient', there));
    expect(here).toMatchObject({ goals: 'Skiing', plans: [given] });
    expect(here.alsoNoted).toEqual([
      { at: '2026-03-01T04:05:06.000Z', by: 'AB', notes: { goals: 'Running', restrictions: 'No stairs' } },
    ]);
    const before = await versions(ab);
    await ab.exchange(server);
    await kn.exchange(server);
    expect(await versions(ab)).toEqual(before);
  });

  it('comes to one record where three changed it apart', async () => {
    const all = await practiceOf('AB', 'KN', 'PQ');
    await all[0]!.repository.patients.add(heron);
    for (const one of all) await one.exchange(server);
    for (const [index, one] of all.entries())
      await note(one, { goals: `Goal of ${one.initials}`, changedAt: `2026-03-0${index + 1}T04:05:06.000Z` });
    for (let round = 0; round < 4; round++) for (const one of all) await one.exchange(server);
    const records = await Promise.all(all.map(only));
    expect(new Set(records.map((one) => contentHash('patient', one))).size).toBe(1);
    expect(records[0]!.goals).toBe('Goal of PQ');
    expect(records[0]!.alsoNoted.map(({ notes }) => notes.goals).sort()).toEqual([
      'Goal of AB',
      'Goal of KN',
    ]);
  });

  it('keeps what was settled on either device', async () => {
    const [ab, kn] = await two();
    const session = inventedSession('Blue Heron 7');
    await ab.repository.patients.add(heron);
    await ab.repository.sessions.save(session);
    await ab.exchange(server);
    await kn.exchange(server);
    for (const one of [ab, kn]) {
      const settles = [
        { visitId: session.id, by: 'therapist' as const, who: one.initials, at: '2026-03-02T04:05:06.000Z' },
      ];
      await one.repository.sessions.save({ ...session, settles });
    }
    for (let round = 0; round < 3; round++) for (const one of [ab, kn]) await one.exchange(server);
    for (const one of [ab, kn])
      expect((await sessionsOf(one))[0]!.settles.map(({ who }) => who).sort()).toEqual(['AB', 'KN']);
  });

  it('brings to a colleague that what was settled is opened again', async () => {
    const [ab, kn] = await two();
    const session = inventedSession('Blue Heron 7');
    await ab.repository.patients.add(heron);
    await ab.repository.sessions.save(session);
    await ab.exchange(server);
    await kn.exchange(server);
    await testLog(ab.repository).add('Blue Heron 7', { what: 'concern-settled', about: session.id });
    await testLog(kn.repository).add('Blue Heron 7', {
      what: 'review-withdrawn',
      about: session.id,
      by: 'KN',
    });
    for (let round = 0; round < 3; round++) for (const one of [ab, kn]) await one.exchange(server);
    for (const one of [ab, kn]) {
      const { log } = await only(one);
      expect(log.map(({ what }) => what).sort()).toEqual(['concern-settled', 'review-withdrawn']);
      expect(reopeningsOf(log).get(session.id)).toEqual({ by: 'KN', at: '2026-04-12T08:00:00.000Z' });
    }
  });

  it('keeps the version of a session and of a plan that does not count beside it, the same on both', async () => {
    const [ab, kn] = await two();
    const session = inventedSession('Blue Heron 7');
    const planText = (painLimit: number) =>
      JSON.stringify({ ...smallPlan({ patient: 'Blue Heron 7' }), painLimit });
    const { id: planId } = smallPlan();
    await ab.repository.patients.add(heron);
    await ab.repository.sessions.save(session);
    await ab.repository.plans.save(planId, planText(3), '2026-02-03T04:05:06.000Z');
    await ab.exchange(server);
    await kn.exchange(server);
    const settles = [
      { visitId: session.id, by: 'therapist' as const, who: 'AB', at: '2026-03-02T04:05:06.000Z' },
    ];
    await ab.repository.sessions.save({ ...session, remark: 'Of AB', settles });
    await kn.repository.sessions.save({ ...session, remark: 'Of KN' });
    await ab.repository.plans.save(planId, planText(4), '2026-02-04T04:05:06.000Z');
    await kn.repository.plans.save(planId, planText(5), '2026-02-05T04:05:06.000Z');
    for (let round = 0; round < 3; round++) for (const one of [ab, kn]) await one.exchange(server);
    for (const one of [ab, kn]) {
      expect(await sessionsOf(one)).toEqual([{ ...session, remark: 'Of AB', settles }]);
      expect(await one.repository.plans.find(planId)).toBe(planText(5));
      const { otherVersions } = await only(one);
      expect(otherVersions.map(({ kind, of, by, text }) => [kind, of, by, JSON.parse(text)]).sort()).toEqual([
        ['plan', planId, 'AB', JSON.parse(planText(4))],
        ['visit', session.id, 'KN', { ...session, remark: 'Of KN' }],
      ]);
    }
    expect(contentHash('patient', await only(ab))).toBe(contentHash('patient', await only(kn)));
    expect(
      (await readOtherVersions(kn.repository, await only(kn))).map((one) => one.differences).sort(),
    ).toEqual([
      ['Pain limit: 4; the one that counts: 5.'],
      ['Remark: “Of KN”; the one that counts: “Of AB”.'],
    ]);
    const before = await versions(ab);
    await ab.exchange(server);
    await kn.exchange(server);
    expect(await versions(ab)).toEqual(before);
  });

  it.each([1, 2, 3, 4])(
    'comes to the same on three devices that change a session apart again and again, and loses no version (%i)',
    async (start) => {
      let seed = start;
      const random = (below: number) => (seed = (seed * 48_271) % 2_147_483_647) % below;
      const all = await practiceOf('AB', 'KN', 'PQ');
      const session = inventedSession('Blue Heron 7', { remark: '' });
      await all[0]!.repository.patients.add(heron);
      await all[0]!.repository.sessions.save(session);
      for (const one of all) await one.exchange(server);
      /** Each change with what it was made from. */
      const made: { from: string; to: string }[] = [];
      for (let step = 0; step < 12; step++) {
        const device = all[random(3)]!;
        const kept = (await device.repository.sessions.find(session.id))!;
        const remark = `${step} by ${device.initials}`;
        made.push({ from: kept.remark, to: remark });
        const settled = { visitId: session.id, by: 'therapist' as const, who: device.initials };
        const at = `2026-03-${10 + random(15)}T04:05:06.000Z`;
        const settles = random(2) === 0 ? kept.settles : [...kept.settles, { ...settled, at }];
        await device.repository.sessions.save({ ...kept, remark, settles });
        if (random(2) === 0) await all[random(3)]!.exchange(server);
        if (random(5) === 0) await device.reopen();
      }
      for (let round = 0; round < 4; round++) for (const one of all) await one.exchange(server);
      const [sessions, records] = [
        await Promise.all(all.map(async (one) => (await sessionsOf(one))[0]!)),
        await Promise.all(all.map(only)),
      ];
      expect(new Set(sessions.map((one) => contentHash('session', one))).size).toBe(1);
      expect(new Set(records.map((one) => contentHash('patient', one))).size).toBe(1);
      const beside = records[0]!.otherVersions.map(
        ({ text }) => (JSON.parse(text) as { remark: string }).remark,
      );
      expect(new Set(beside).size).toBe(beside.length);
      const replaced = new Set(made.map(({ from }) => from));
      const latest = made.map(({ to }) => to).filter((one) => !replaced.has(one));
      for (const remark of latest) expect([sessions[0]!.remark, ...beside]).toContain(remark);
      for (const one of all) expect(one.replication.refused.list()).toEqual([]);
    },
  );

  it('brings recordings where asked, after their session, and keeps the remarks of both', async () => {
    const both = [
      await practiceDevice('AB', { scope: 'recordings' }),
      await practiceDevice('KN', { scope: 'recordings' }),
    ] as const;
    const [ab, kn] = both;
    await ab.add(kn);
    await kn.add(ab);
    const recording = smallRecording();
    const session = inventedSession('Blue Heron 7');
    await ab.repository.patients.add(heron);
    const whole = {
      recording,
      visitId: session.id,
      fromVideo: 'done',
      video: new Blob(['pictures']),
    } as const;
    await ab.repository.keepTogether(session, [whole]);
    await ab.exchange(server);
    await kn.exchange(server);
    const arrived = await kn.repository.recordings.find(recording.id);
    expect(arrived).toMatchObject({ recording, facts: { visitId: session.id, video: null } });

    for (const [index, { repository, initials: by }] of both.entries()) {
      const kept = (await repository.recordings.findHead(recording.id))!;
      const remark = { atMs: index, text: `By ${by}`, by, at: '2026-03-01T04:05:06.000Z' };
      const review = { ...emptyReview, remarks: [remark] };
      await repository.recordings.update({ ...kept.recording, review }, kept.edition);
    }
    for (let round = 0; round < 3; round++) for (const one of both) await one.exchange(server);
    const [here, there] = await Promise.all(
      both.map(async ({ repository }) => (await repository.recordings.find(recording.id))!),
    );
    expect(here!.recording.review!.remarks.map(({ text }) => text).sort()).toEqual(['By AB', 'By KN']);
    expect(there!.recording).toEqual(here!.recording);
    expect(here!.facts.video).not.toBeNull(); // The video stays where it was.

    await kn.repository.sessions.remove(session.id);
    await kn.exchange(server);
    await ab.exchange(server);
    expect(await ab.repository.recordings.find(recording.id)).toBeNull();
    expect(ab.replication.refused.list()).toEqual([]);
  });

  /** Devices that share recordings too, all with one patient, a session and its recording. */
  async function withOneRecording(...initials: string[]) {
    const all = await Promise.all(initials.map((one) => practiceDevice(one, { scope: 'recordings' })));
    for (const one of all) for (const other of all) if (one !== other) await one.add(other);
    const recording = smallRecording();
    const session = inventedSession('Blue Heron 7');
    await all[0]!.repository.patients.add(heron);
    await all[0]!.repository.keepTogether(session, [
      { recording, visitId: session.id, fromVideo: 'impossible', video: null },
    ]);
    for (const one of all) await one.exchange(server);
    return { all, recording };
  }
  const excluded = (by: string, atMs: number) => ({
    change: { kind: 'exclude' as const, atMs, reason: `At ${atMs}` },
    by,
    at: '2026-03-01T04:05:06.000Z',
  });

  it('keeps the corrections of the review that does not count beside it, the same on both', async () => {
    const { all, recording } = await withOneRecording('AB', 'KN');
    for (const [index, { repository, initials: by }] of all.entries()) {
      const kept = (await repository.recordings.findHead(recording.id))!;
      const reviewed = { by, at: `2026-03-0${2 + index}T04:05:06.000Z` };
      const corrections = [excluded(by, 2000 + 3000 * index)];
      const changed = { ...kept.recording, corrections, review: { ...emptyReview, reviewed } };
      await repository.recordings.update(changed, kept.edition);
    }
    for (let round = 0; round < 3; round++) for (const one of all) await one.exchange(server);
    for (const one of all) {
      const { corrections } = (await one.repository.recordings.find(recording.id))!.recording;
      expect(corrections).toEqual([excluded('KN', 5000)]);
      expect(await readOtherVersions(one.repository, await only(one))).toMatchObject([
        {
          name: 'Review of “Split-stance sit-to-stand”, right, of Tue 5 Mar 2024',
          by: 'AB',
          differences: [
            'Left out: The repetition at 2.0 s does not count: At 2000 (AB)',
            'Only in the one that counts: The repetition at 5.0 s does not count: At 5000 (KN)',
          ],
        },
      ]);
    }
    const [ab, kn] = all as [PracticeDevice, PracticeDevice];
    expect(contentHash('patient', await only(ab))).toBe(contentHash('patient', await only(kn)));
    const before = await versions(ab);
    for (const one of all) await one.exchange(server);
    expect(await versions(ab)).toEqual(before);
  });

  it.each([1, 2, 3])(
    'comes to the same on three devices that review a set apart again and again, and loses no correction or cue (%i)',
    async (start) => {
      let seed = start;
      const random = (below: number) => (seed = (seed * 48_271) % 2_147_483_647) % below;
      const { all, recording } = await withOneRecording('AB', 'KN', 'PQ');
      const made: unknown[] = [];
      for (let step = 0; step < 12; step++) {
        const { repository, initials: by, ...device } = all[random(3)]!;
        const { recording: kept, edition } = (await repository.recordings.findHead(recording.id))!;
        const { corrections = [], review = emptyReview } = kept;
        const correction = excluded(by, 100 * step);
        const cue = { atMs: 100 * step, text: `Cue ${step}` };
        const isCue = random(3) === 0;
        made.push(isCue ? cue : correction);
        const at = `2026-03-${10 + random(15)}T04:05:06.000Z`;
        const changed = {
          ...kept,
          corrections: isCue ? corrections : [...corrections, correction],
          review: {
            ...review,
            cues: isCue ? [...review.cues, cue] : review.cues,
            reviewed: random(2) === 0 ? review.reviewed : { by, at },
          },
        };
        await repository.recordings.update(changed, edition);
        if (random(2) === 0) await all[random(3)]!.exchange(server);
        if (random(5) === 0) await device.reopen();
      }
      for (let round = 0; round < 4; round++) for (const one of all) await one.exchange(server);
      const found = await Promise.all(
        all.map(async (one) => (await one.repository.recordings.find(recording.id))!.recording),
      );
      const records = await Promise.all(all.map(only));
      expect(new Set(found.map((one) => contentHash('recording', one))).size).toBe(1);
      expect(new Set(records.map((one) => contentHash('patient', one))).size).toBe(1);
      const texts = records[0]!.otherVersions.map(({ text }) => text);
      expect(texts.length).toBeGreaterThan(0);
      expect(new Set(texts).size).toBe(texts.length);
      const kept = [
        { corrections: found[0]!.corrections ?? [], cues: found[0]!.review!.cues },
        ...texts.map((text) => readOtherReview(text)!),
      ].flatMap(({ corrections, cues }) => [...corrections, ...cues]);
      for (const one of made) expect(kept).toContainEqual(one);
      const before = await versions(all[0]!);
      for (const one of all) await one.exchange(server);
      expect(await versions(all[0]!)).toEqual(before);
      for (const one of all) expect(one.replication.refused.list()).toEqual([]);
    },
  );

  it('brings videos where asked, in pieces, and puts them together once all have come', async () => {
    const [ab, kn] = [
      await practiceDevice('AB', { scope: 'videos' }),
      await practiceDevice('KN', { scope: 'videos' }),
    ];
    await ab.add(kn);
    await kn.add(ab);
    const recording = smallRecording();
    const session = inventedSession('Blue Heron 7');
    const bytes = Uint8Array.from({ length: 2 * pieceBytes + 7 }, (_, at) => (at * 31) % 251);
    const video = new Blob([bytes], { type: 'video/mp4' });
    await ab.repository.patients.add(heron);
    await ab.repository.keepTogether(session, [{ recording, visitId: session.id, fromVideo: 'done', video }]);
    await ab.exchange(server);
    expect(await documentsOn(server)).toHaveLength(6);
    server.cutAfter(2_000_000);
    await kn.exchange(server).catch(() => undefined);
    expect(server.isCut()).toBe(true);
    expect((await kn.repository.videos.list()).length).toBe(0);
    server.mend();
    await kn.exchange(server);
    const { facts } = (await kn.repository.recordings.find(recording.id))!;
    expect(facts).toMatchObject({ fromVideo: 'done', visitId: session.id });
    const arrived = await kn.repository.videos.read(facts.video!);
    expect(Buffer.from(await arrived!.arrayBuffer()).equals(bytes)).toBe(true);
    expect(readAll(server.folder).includes(Buffer.from(bytes.subarray(1000, 1100)))).toBe(false);
    await kn.reopen();
    await kn.exchange(server);
    await ab.exchange(server);
    expect(await documentsOn(server)).toHaveLength(6);

    // What is freed on one device stays on the other.
    await ab.repository.freeVideos('2100-01-01T00:00:00.000Z');
    await ab.exchange(server);
    await kn.exchange(server);
    expect(await kn.repository.videos.list()).toHaveLength(1);
    await kn.repository.recordings.remove(recording.id);
    await kn.exchange(server);
    await ab.exchange(server);
    expect(await ab.repository.recordings.find(recording.id)).toBeNull();
  });

  it('deletes on all devices what one of them deleted, and nothing that a device lost or erased', async () => {
    const [ab, kn] = await two();
    const [first, second] = [inventedSession('Blue Heron 7'), inventedSession('Blue Heron 7')];
    await ab.repository.patients.add(heron);
    await ab.repository.sessions.save(first);
    await ab.repository.sessions.save(second);
    await ab.exchange(server);
    await kn.exchange(server);
    await kn.repository.sessions.remove(first.id);
    await kn.exchange(server);
    await ab.exchange(server);
    expect(await sessionsOf(ab)).toEqual([second]);
    await ab.repository.eraseAll();
    await ab.exchange(server);
    await kn.exchange(server);
    expect(await sessionsOf(kn)).toEqual([second]);
    await only(kn);
  });

  it('shares with another server, and again where the sealed copies of the device were lost', async () => {
    const [ab, kn] = await two();
    await ab.repository.patients.add(heron);
    await ab.exchange(server);
    const other = await startReplicaServer();
    onTestFinished(other.stop);
    await ab.exchange(other);
    expect(await documentsOn(other)).toHaveLength(1);
    await ab.replica.destroy();
    await ab.reopen();
    const third = await startReplicaServer();
    onTestFinished(third.stop);
    await ab.exchange(third);
    await kn.exchange(third);
    expect(await only(kn)).toEqual(heron);
    await ab.exchange(server); // Where the earlier copy is still.
    await kn.exchange(server);
    expect(await only(ab)).toEqual(heron);
    expect(await documentsOn(server)).toHaveLength(1);
  });

  it('sends nothing of a demo patient, and no session without a patient', async () => {
    const [ab, kn] = await two();
    await ab.repository.patients.add(inventedPatient('Grey Otter 3', { note: 'Invented.' }));
    await ab.repository.sessions.save(inventedSession('Grey Otter 3'));
    await ab.repository.sessions.save(inventedSession(''));
    await ab.exchange(server);
    await kn.exchange(server);
    expect(await documentsOn(server)).toEqual([]);
  });

  it('gives somebody who joins everything, and somebody who was taken out nothing new', async () => {
    const [ab, kn] = await two();
    await ab.repository.patients.add(heron);
    await ab.exchange(server);
    await kn.exchange(server);
    const pq = await practiceDevice('PQ');
    await pq.add(ab);
    await pq.add(kn);
    await pq.exchange(server);
    expect(await patientsOf(pq)).toEqual([]);
    expect(pq.replication.refused.list()).toMatchObject([{ reason: 'other-people' }]);
    await ab.add(pq);
    await ab.exchange(server);
    await pq.exchange(server);
    expect(await only(pq)).toEqual(heron);
    expect(pq.replication.refused.list()).toEqual([]);

    await ab.takeOut(pq);
    await note(ab, { goals: 'Not for PQ', changedAt: '2026-04-01T04:05:06.000Z' });
    await ab.exchange(server);
    await kn.add(pq); // Had PQ in the list all along; hears from AB that PQ is out.
    await kn.exchange(server);
    await note(kn, { restrictions: 'Not for PQ either', changedAt: '2026-04-02T04:05:06.000Z' });
    await kn.exchange(server);
    await pq.exchange(server);
    expect(await only(pq)).toEqual(heron);
    expect((await kn.replication.circle()).outElsewhere).toEqual([{ initials: 'PQ', by: 'AB' }]);

    await note(pq, { goals: 'From outside', changedAt: '2026-05-01T04:05:06.000Z' });
    await pq.exchange(server);
    for (const one of [ab, kn, ab, kn]) await one.exchange(server);
    for (const one of [ab, kn])
      expect(await only(one)).toMatchObject({ goals: 'Not for PQ', restrictions: 'Not for PQ either' });
    expect(ab.replication.refused.list()).toEqual([]); // What PQ wrote over it was written over in turn.
  });

  it('loses nothing and doubles nothing while the line is cut 20 times, also where the program is closed', async () => {
    const [ab, kn] = await two();
    await ab.repository.patients.add(heron);
    const sent: string[] = [];
    for (let index = 0; index < 60; index++) {
      const session = inventedSession('Blue Heron 7', { remark: `Visit ${index}` });
      await ab.repository.sessions.save(session);
      sent.push(session.id);
    }
    let seed = 20;
    const random = (below: number) => (seed = (seed * 48_271) % 2_147_483_647) % below;
    let cuts = 0;
    for (let tries = 0; cuts < 20 && tries < 200; tries++) {
      const device = [ab, kn][random(2)]!;
      server.cutAfter(1 + random(12_000));
      await device.exchange(server).catch(() => undefined);
      if (server.isCut()) cuts++;
      server.mend();
      if (random(4) === 0) await device.reopen();
    }
    expect(cuts).toBe(20);
    for (const one of [ab, kn, ab]) await one.exchange(server);
    const arrived = (await sessionsOf(kn)).map(({ id }) => id);
    expect(arrived.sort()).toEqual(sent.sort());
    expect((await sessionsOf(ab)).map(({ id }) => id).sort()).toEqual(sent);
    expect(await documentsOn(server)).toHaveLength(61);
    await only(kn);
  });

  it('stops at a full device, and takes in the rest when there is room again', async () => {
    const [ab, kn] = await two();
    await ab.repository.patients.add(heron);
    const session = inventedSession('Blue Heron 7');
    await ab.repository.sessions.save(session);
    await ab.exchange(server);
    const { change } = kn.repository.replica;
    kn.repository.replica.change = () => Promise.reject(storageProblem('full'));
    await expect(kn.exchange(server)).rejects.toThrow(/full|space|room/i);
    expect(await patientsOf(kn)).toEqual([]);
    kn.repository.replica.change = change;
    await kn.exchange(server);
    expect(await only(kn)).toEqual(heron);
    expect(await sessionsOf(kn)).toEqual([session]);
  });

  it('leaves on the disk of the server no pseudonym, word or number of a record, and no id', async () => {
    const [ab] = await two();
    const session = inventedSession('Blue Heron 7', { remark: 'Quite sore after the stairs', painAfter: 7 });
    await ab.repository.patients.add(heron);
    await ab.repository.sessions.save(session);
    await ab.exchange(server);
    const bytes = readAll(server.folder);
    const [stored] = await documentsOn(server);
    expect(bytes.includes(stored!.id)).toBe(true); // So that what is searched is where it lies.
    const traces = [
      'Heron',
      'overfoot-patient',
      'overfoot-visit',
      'sore',
      'Stairs',
      'painAfter',
      session.id,
      heron.id,
    ];
    for (const trace of [...traces, ab.key.recipient, session.startedAt])
      for (const form of [trace, Buffer.from(trace).toString('base64').slice(0, -4)])
        expect(bytes.includes(form), form).toBe(false);
  });

  describe('with a server that can’t be trusted', () => {
    const untouched = async (device: PracticeDevice) => {
      expect(await only(device)).toEqual(heron);
      expect(await sessionsOf(device)).toEqual([]);
    };

    it('refuses garbage, writes over what was spoilt, and deletes nothing that the server deleted', async () => {
      const [ab, kn] = await two();
      await ab.repository.patients.add(heron);
      await ab.exchange(server);
      await kn.exchange(server);
      const [{ id, rev } = { id: '', rev: '' }] = await documentsOn(server);
      await putOn(server, { _id: id, _rev: rev, sealed: 'Zm9v' });
      await putOn(server, { _id: crypto.randomUUID(), sealed: 'x'.repeat(100_000) });
      await putOn(server, { _id: 'not-an-id', words: { deep: [1, 2, 3] } });
      await putOn(server, { _id: '_design/hostile', views: {} });
      for (const one of [kn, ab, kn]) await one.exchange(server);
      await untouched(kn);
      expect(kn.replication.refused.list().map(({ reason }) => reason)).toEqual([
        'garbage',
        'garbage',
        'garbage',
      ]);
      const late = await practiceDevice('PQ');
      for (const one of [ab, kn]) {
        await late.add(one);
        await one.add(late);
        await one.exchange(server);
      }
      await late.exchange(server);
      await untouched(late);

      const deleting = (await documentsOn(server)).find((one) => one.id === id)!;
      await putOn(server, { _id: id, _rev: deleting.rev, _deleted: true });
      for (const one of [kn, ab, kn]) await one.exchange(server);
      await untouched(kn);
      await untouched(ab);
    });

    it('refuses another practice’s documents, and copies in another place', async () => {
      const [ab, kn] = await two();
      const [xy, zw] = await two('XY', 'ZW');
      await ab.repository.patients.add(heron);
      await ab.exchange(server);
      await kn.exchange(server);
      const [own] = await documentsOn(server);
      await xy.repository.patients.add(inventedPatient('Grey Otter 3'));
      await xy.exchange(server);
      await putOn(server, { _id: crypto.randomUUID(), sealed: own!.sealed });
      await kn.exchange(server);
      await zw.exchange(server);
      await untouched(kn);
      const reasons = kn.replication.refused.list().map(({ reason }) => reason);
      expect(reasons.sort()).toEqual(['other-people', 'other-place']);
      expect((await only(zw)).pseudonym).toBe('Grey Otter 3');
    });

    it('refuses what somebody else sealed in a colleague’s name, for whom they know all public keys', async () => {
      const [ab, kn] = await two();
      await ab.repository.patients.add(heron);
      await ab.exchange(server);
      await kn.exchange(server);
      const replicaId = crypto.randomUUID();
      const forger = await newKeyPair();
      const facts = {
        replicaId,
        recipients: [ab.key.recipient, kn.key.recipient],
        takenOut: [],
        sealedAt: '2026-05-06T07:08:09.000Z',
        by: 'AB',
        kind: 'patient' as const,
        id: heron.id,
        patientId: heron.id,
        sessionId: null,
        ancestors: [contentHash('patient', heron)],
      };
      const altered = { ...heron, goals: 'Forged' };
      const inName = { identity: forger.identity, recipient: ab.key.recipient };
      await putOn(server, { _id: replicaId, sealed: await sealShared(facts, altered, inName) });
      await putOn(server, { _id: crypto.randomUUID(), sealed: await sealShared(facts, altered, forger) });
      await kn.exchange(server);
      await untouched(kn);
      expect(
        kn.replication.refused
          .list()
          .map(({ reason }) => reason)
          .sort(),
      ).toEqual(['forged', 'no-member']);
    });

    it('is not set back by old versions that are served as new ones', async () => {
      const [ab, kn] = await two();
      await ab.repository.patients.add(heron);
      await ab.exchange(server);
      await kn.exchange(server);
      const [old] = await documentsOn(server);
      await note(ab, { goals: 'Running', changedAt: '2026-03-01T04:05:06.000Z' });
      await ab.exchange(server);
      await kn.exchange(server);
      const [latest] = await documentsOn(server);
      await putOn(server, { _id: old!.id, _rev: latest!.rev, sealed: old!.sealed });
      for (const one of [kn, ab, kn]) await one.exchange(server);
      for (const one of [ab, kn]) expect(await only(one)).toMatchObject({ goals: 'Running', alsoNoted: [] });
    });

    it('refuses a patient of another person under a pseudonym that is used here, with the sessions', async () => {
      const [ab, kn] = await two();
      const other = inventedPatient('Blue Heron 7', { goals: 'Another person' });
      await ab.repository.patients.add(heron);
      await kn.repository.patients.add(other);
      await ab.repository.sessions.save(inventedSession('Blue Heron 7'));
      await ab.exchange(server);
      await kn.exchange(server);
      await ab.exchange(server);
      expect(await only(kn)).toEqual(other);
      expect(await only(ab)).toEqual(heron);
      expect(await sessionsOf(kn)).toEqual([]);
      expect(
        kn.replication.refused
          .list()
          .map(({ reason }) => reason)
          .sort(),
      ).toEqual(['namesake', 'waits']);
    });

    it('makes one of two patients where a therapist signs that they are one person, the same on three devices', async () => {
      const [ab, kn, pq] = (await practiceOf('AB', 'KN', 'PQ')) as [
        PracticeDevice,
        PracticeDevice,
        PracticeDevice,
      ];
      const [ofAb, ofKn] = [inventedSession('Blue Heron 7'), inventedSession('Blue Heron 7')];
      await ab.repository.patients.add(heron);
      await ab.repository.sessions.save(ofAb);
      await ab.exchange(server);
      await pq.exchange(server);
      await kn.repository.patients.add(
        inventedPatient('Blue Heron 7', { goals: 'Skiing', changedAt: '2026-03-02T04:05:06.000Z' }),
      );
      await kn.repository.sessions.save(ofKn);
      for (const one of [kn, ab, pq]) await one.exchange(server);
      const namesake = { pseudonym: 'Blue Heron 7', patientId: heron.id, by: 'AB' };
      const { id: hereId } = await only(kn);
      expect(await kn.replication.namesakes()).toEqual([{ ...namesake, hereId, isDemoHere: false }]);
      expect(await sessionsOf(kn)).toEqual([ofKn]);
      await kn.reopen(); // It stays known what was refused, and is tried again.
      expect(await kn.replication.namesakes()).toHaveLength(1);

      await testLog(kn.repository).add('Blue Heron 7', { what: 'taken', about: heron.id, by: 'KN' });
      await kn.replication.retryNamesakes();
      expect(await kn.replication.namesakes()).toEqual([]);
      for (let round = 0; round < 3; round++) for (const one of [kn, ab, pq]) await one.exchange(server);
      const records = await Promise.all([ab, kn, pq].map(only));
      expect(new Set(records.map((one) => contentHash('patient', one))).size).toBe(1);
      expect(records[0]).toMatchObject({
        goals: 'Skiing',
        alsoNoted: [{ by: 'AB', notes: { goals: 'Stairs without the rail' } }],
      });
      for (const one of [ab, kn, pq]) {
        expect((await sessionsOf(one)).map(({ id }) => id).sort()).toEqual([ofAb.id, ofKn.id].sort());
        expect(one.replication.refused.list()).toEqual([]);
      }
    });

    it('takes in the patient of a colleague once the one here under that pseudonym is deleted', async () => {
      const [ab, kn] = await two();
      const other = inventedPatient('Blue Heron 7', { goals: 'Another person' });
      await ab.repository.patients.add(heron);
      await kn.repository.patients.add(other);
      await kn.exchange(server);
      await ab.exchange(server);
      await kn.exchange(server);
      expect(await kn.replication.namesakes()).toMatchObject([{ pseudonym: 'Blue Heron 7' }]);
      await kn.repository.patients.remove(other.id);
      await kn.replication.settled();
      expect(await only(kn)).toEqual(heron);
      expect(await kn.replication.namesakes()).toEqual([]);
      for (const one of [kn, ab, kn]) await one.exchange(server);
      expect(await only(ab)).toEqual(heron);
      expect(ab.replication.refused.list()).toEqual([]);
    });

    it('merges two records that were made of one person on two devices, which have a plan in common', async () => {
      const [ab, kn] = await two();
      await ab.repository.patients.add({ ...heron, plans: [given] });
      await kn.repository.patients.add(
        inventedPatient('Blue Heron 7', { plans: [given], restrictions: 'No stairs' }),
      );
      for (let round = 0; round < 3; round++) for (const one of [ab, kn]) await one.exchange(server);
      const [here, there] = [await only(ab), await only(kn)];
      expect(contentHash('patient', here)).toBe(contentHash('patient', there));
      expect(here.id).not.toBe(there.id);
    });
  });
});

const given = { id: 'b7d4b0a5-2c55-4d6c-8a6e-3f1de2c86f14', givenAt: '2026-02-03T04:05:06.000Z' };

async function two(one = 'AB', other = 'KN'): Promise<[PracticeDevice, PracticeDevice]> {
  return (await practiceOf(one, other)) as [PracticeDevice, PracticeDevice];
}

async function note(device: PracticeDevice, change: Partial<PatientDocument>): Promise<void> {
  await device.repository.patients.update(heron.id, (kept) => ({ ...kept, ...change }));
}

const versions = (device: PracticeDevice) => device.replica.changes(0, 1000);

function readAll(folder: string): Buffer {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return Buffer.concat(names.map(({ parentPath, name }) => readFileSync(join(parentPath, name))));
}
