import { median } from 'd3-array';
import { measure } from '#core/measurement/measure';
import { withLimit, type Limits } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { repeatTrack } from './repeatTrack';

const wanted = 1000;
const rounds = 31;

/**
 * How long judging 1,000 repetitions against a moved limit of the knee takes, with counting which verdicts change;
 * median, ms.
 *
 * @param limits  the other ones, which stay
 */
export function timeRejudging(
  recording: RecordingDocument,
  limits: Limits,
): { rejudgeMs: number; repetitions: number } {
  const track = recordingTrack(recording);
  const own = recording.derived.repetitions.length;
  const measurement = measure(repeatTrack(track, Math.ceil((wanted / own) * 1.05)), recording.setup);
  const repetitions = measurement.repetitions.slice(0, wanted);
  const judgeAll = (moved: Limits) => repetitions.map((one) => judge(one, measurement, moved));
  let before = judgeAll(limits);
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const moved = withLimit(limits, 'knee-angle', 'most', 4 + (round % 16));
    const startMs = performance.now();
    const after = judgeAll(moved);
    after.filter(({ verdict }, index) => verdict !== before[index]?.verdict);
    times.push(performance.now() - startMs);
    before = after;
  }
  return { rejudgeMs: median(times)!, repetitions: repetitions.length };
}
