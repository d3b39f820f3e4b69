import type { NotedConditions } from '#core/conditions/setConditions';
import { defaultLimits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { notedConditions } from '#documents/plan/notedConditions';
import type { ListedRecording, ListedSession } from '#features/sessions/rules/listedSession';
import { listedRecording, listedSession, readingOf } from './listedSession';
import { smallItem } from './smallPlan';

/** Under what the sets are done, unless another is given. */
export const asked = notedConditions(smallItem({ feedback: 'none' }), { footwear: 'shoes' });
let next = 0;
const newId = () => `7b0c3c52-6d2e-4c57-9a5b-${String(next++).padStart(12, '0')}`;

interface SetChange {
  side?: Side;
  peaks?: (number | null)[];
  limits?: typeof defaultLimits;
  asked?: NotedConditions | null;
  bendsFilmed?: boolean;
}

/** A measured set; its bands are 4. */
export function measured(change: SetChange = {}): ListedRecording {
  const { side = 'right', peaks = [12, 9, 6], limits = defaultLimits, bendsFilmed = true } = change;
  const points = peaks.map((valueDeg, index) => ({
    number: index + 1,
    valueDeg,
    bandDeg: valueDeg === null ? 0 : 4,
    isAtEdge: false,
    verdict: 'in' as const,
  }));
  const known = peaks.filter((one) => one !== null);
  const meanDeg = known.reduce((sum, one) => sum + one, 0) / known.length;
  const peak = known.length < 3 ? null : { meanDeg, count: known.length, semDeg: 2 };
  const reading = readingOf(peaks.map(() => 'in'));
  return {
    ...listedRecording({ line: { sessionId: newId(), side } }),
    asked: change.asked === undefined ? asked : change.asked,
    reading: {
      ...reading,
      result: { ...reading.result, peak },
      course: { points, limits, bendsFilmed, measuringVersion: 7 },
    },
  };
}

/** A session in the morning of a day, in UTC. */
export const session = (day: string, sets: ListedRecording[], change: Partial<ListedSession> = {}) =>
  listedSession({ id: newId(), startedAt: `${day}T08:00:00.000Z`, sets, ...change });
