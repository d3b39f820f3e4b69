import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { usualSureness } from '#core/chance/grade';
import type { CorrectionChange } from '#core/correction/correction';
import { measuringVersion } from '#core/measurement/measurement';
import { otherSide, sides, type Side } from '#core/protocol/side';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead } from '#documents/recording/recordingHead';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { createReview } from '#features/review/store/createReview';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import { changeSinceLast } from '#features/sessions/rules/peakChange';
import { createKeptSessions } from '#features/sessions/store/createKeptSessions';
import { reviewSession } from '#features/sessions/store/reviewSession';
import { remeasureRecording } from '#tools/commands/tools/remeasureRecording';
import { fakeAdapters } from '../../../../support/fakeAdapters';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';
import { settle } from '../../../../support/startReview';
import { testLog } from '../../../../support/testLog';

const right = smallRecording();
/** The same person with the names of the legs exchanged throughout: a recording of the left leg. */
const left = remeasureRecording({
  ...right,
  setup: { ...right.setup, side: 'left' },
  corrections: [signed({ kind: 'mirrored', isMirrored: true })],
});

function signed(change: CorrectionChange) {
  return { change, by: 'T1', at: '2026-03-04T05:06:07.000Z' };
}

/** A recording that says `chosen` at first, and shows the leg `worked`. */
function recordingOf(id: string, chosen: Side, worked: Side): RecordingDocument {
  const shown = worked === 'left' ? left : right;
  const corrections = [
    ...(shown.corrections ?? []),
    ...(chosen === worked ? [] : [signed({ kind: 'working-side' as const, side: worked })]),
  ];
  return remeasureRecording({ ...shown, id, setup: { ...shown.setup, side: chosen }, corrections });
}

const idOf = (digit: number) => `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`;

/** A session of one day whose sets are planned with these legs. */
function sessionOf(day: number, sets: readonly { id: string; planned: Side }[]): SessionDocument {
  const [line] = smallSession().sets;
  return {
    ...smallSession(),
    id: idOf(day).replace('7b0c', '3f4a'),
    startedAt: `2026-04-0${day}T06:07:08.000Z`,
    endedAt: `2026-04-0${day}T06:21:08.000Z`,
    sets: sets.map(({ id, planned }) => ({ ...line!, sessionId: id, side: planned })),
  };
}

async function listOf(device: Awaited<ReturnType<ReturnType<typeof createTestDevice>['open']>>) {
  const review = createReview(fakeAdapters().adapters);
  const kept = createKeptSessions({
    openRepository: () => Promise.resolve({ repository: device, problem: null }),
    notes: { read: () => [], write: () => undefined },
    nowMs: () => 5000,
    later: () => () => undefined,
    forgetRest: () => undefined,
    review,
    log: testLog(device),
    sureness: () => usualSureness,
    sessionsOf: () => Promise.resolve([]),
  });
  await kept.enter();
  return { kept, review, sessions: () => kept.store.getState().sessions! };
}

const anySide = fc.constantFrom<Side>(...sides);
/** Few runs: each measures and keeps two recordings. */
const runs = { numRuns: 12 };

describe('left and right in the list of sessions', { timeout: 60_000 }, () => {
  it('are those of the review, saved with it or later', async () => {
    await fc.assert(
      fc.asyncProperty(anySide, anySide, fc.boolean(), async (planned, worked, isLater) => {
        const repository = await createTestDevice().open();
        const session = sessionOf(2, [{ id: idOf(1), planned }]);
        const beside = { visitId: session.id, video: null, fromVideo: 'impossible' } as const;
        const corrected = recordingOf(idOf(1), planned, worked);
        if (isLater) {
          await repository.recordings.save(recordingOf(idOf(1), planned, planned), beside);
          const { edition } = (await repository.recordings.findHead(idOf(1)))!;
          await repository.recordings.update(recordingHead(corrected), edition);
        } else await repository.recordings.save(corrected, beside);
        await repository.sessions.save(session);
        const { sessions } = await listOf(repository);
        expect(sessions()[0]!.sets[0]!.line.side).toBe(worked);
      }),
      runs,
    );
  });

  it('are in doubt where the other leg worked, however old the measuring', async () => {
    await fc.assert(
      fc.asyncProperty(anySide, fc.constantFrom(measuringVersion, 6), async (worked, version) => {
        const repository = await createTestDevice().open();
        const planned = otherSide(worked);
        const session = sessionOf(2, [{ id: idOf(1), planned }]);
        const { setup, corrections = [], ...shown } = worked === 'left' ? left : right;
        const asPlanned = { ...shown, id: idOf(1), setup: { ...setup, side: planned }, corrections };
        const recording = remeasureRecording(asPlanned);
        const { isSideDoubtful: _, ...older } = recording.derived;
        const derived = version === measuringVersion ? recording.derived : older;
        await repository.recordings.save(
          { ...recording, derived: { ...derived, measuringVersion: version } },
          { visitId: session.id, video: null, fromVideo: 'impossible' },
        );
        await repository.sessions.save(session);
        const [listed] = (await listOf(repository)).sessions();
        expect(findNeeds(listed!)).toContainEqual({ kind: 'side-doubtful', sets: 1 });
      }),
      runs,
    );
  });

  it('follow a switch in the review at once', async () => {
    await fc.assert(
      fc.asyncProperty(anySide, async (planned) => {
        const repository = await createTestDevice().open();
        const session = sessionOf(2, [{ id: idOf(1), planned }]);
        const beside = { visitId: session.id, video: null, fromVideo: 'impossible' } as const;
        await repository.recordings.save(recordingOf(idOf(1), planned, planned), beside);
        await repository.sessions.save(session);
        const { kept, review, sessions } = await listOf(repository);
        await kept.openSet(idOf(1), 'a set');
        review.correct({ kind: 'working-side', side: otherSide(planned) });
        await settle();
        await vi.waitFor(() => expect(sessions()[0]!.sets[0]!.line.side).toBe(otherSide(planned)));
      }),
      { numRuns: 4 },
    );
  });

  it('decide with what a set is compared, and what the other leg’s result is called', async () => {
    await fc.assert(
      fc.asyncProperty(anySide, anySide, anySide, async (before, planned, worked) => {
        const repository = await createTestDevice().open();
        const sessions = [
          sessionOf(1, [{ id: idOf(1), planned: before }]),
          sessionOf(2, [
            { id: idOf(2), planned },
            { id: idOf(3), planned: otherSide(worked) },
          ]),
        ] as const;
        const save = (recording: RecordingDocument, { id: visitId }: SessionDocument) =>
          repository.recordings.save(recording, { visitId, video: null, fromVideo: 'impossible' });
        await save(recordingOf(idOf(1), before, before), sessions[0]);
        await save(recordingOf(idOf(2), planned, worked), sessions[1]);
        await save(recordingOf(idOf(3), otherSide(worked), otherSide(worked)), sessions[1]);
        for (const session of sessions) await repository.sessions.save(session);
        const listed = (await listOf(repository)).sessions();
        const later = listed[0]!;
        const peak = { meanDeg: 10, semDeg: 1, count: 3 };
        const measured = listed.map((session) => ({
          ...session,
          sets: session.sets.map((set) =>
            set.reading.state === 'read'
              ? { ...set, reading: { ...set.reading, result: { ...set.reading.result, peak } } }
              : set,
          ),
        }));
        const change = changeSinceLast(measured, later, measured[0]!.sets[0]!);
        expect(change === null).toBe(before !== worked);
        expect(reviewSession(listed, idOf(2))!.otherSide).toMatchObject({ side: otherSide(worked) });
      }),
      runs,
    );
  });
});
