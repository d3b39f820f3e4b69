import { describe, expect, it } from 'vitest';
import type { RecordingFacts } from '#device/storage/keptSchemas';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { changeSinceLast } from '#features/home/store/changeSinceLast';
import { recordingText } from '../../../../support/fakeAdapters';
import { smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';

const plan = smallPlan({ createdAt: '2026-05-01T06:00:00.000Z' });
const recording = parseRecording(recordingText);
const [line] = smallSession().sets;

/** A session with one set; the recording's id says by how much its knee went farther inward, degrees. */
function on(day: number, moreDeg: string | null): SessionDocument {
  const startedAt = `2026-05-0${day}T08:00:00.000Z`;
  const sets = [{ ...line!, cutShort: null, sessionId: moreDeg }];
  return { ...smallSession(), id: `day ${day}`, planId: plan.id, startedAt, sets };
}

function recordings(fromVideo: RecordingFacts['fromVideo'] = 'done') {
  return {
    findHead(id: string) {
      const repetitions = recording.derived.repetitions.map((repetition) => {
        const range = repetition.ranges['knee-angle'];
        const max = { ...range.max!, value: Number(id), band: 0.5, ownBand: 0.5 };
        return { ...repetition, ranges: { ...repetition.ranges, 'knee-angle': { ...range, max } } };
      });
      const head: RecordingHead = { ...recording, derived: { ...recording.derived, repetitions } };
      return Promise.resolve({
        recording: head,
        facts: { fromVideo } as RecordingFacts,
        edition: {} as never,
      });
    },
  };
}

describe('changeSinceLast(session, sessions, plan, recordings)', () => {
  const now = on(5, '3');

  it('compares with the last session of the plan before it', async () => {
    const found = await changeSinceLast(now, [on(6, '3'), now, on(4, '19'), on(3, '3')], plan, recordings());
    expect(found).toEqual({ change: 'less-inward', side: line!.side, earlierAt: '2026-05-04T08:00:00.000Z' });
    expect(await changeSinceLast(now, [now, on(4, '5'), on(3, '19')], plan, recordings())).toBeNull();
  });

  it('finds nothing where nothing was measured, or it is not final', async () => {
    expect(await changeSinceLast(now, [now], plan, recordings())).toBeNull();
    expect(await changeSinceLast(now, [now, on(4, null)], plan, recordings())).toBeNull();
    expect(await changeSinceLast(now, [now, on(4, '19')], plan, recordings('waiting'))).toBeNull();
  });

  it('compares nothing from before the plan was changed', async () => {
    const changed = { ...plan, createdAt: '2026-05-04T09:00:00.000Z' };
    expect(await changeSinceLast(now, [now, on(4, '19')], changed, recordings())).toBeNull();
  });
});
