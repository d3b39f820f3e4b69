import { greatest, least } from 'd3-array';
import type { Limits } from '#core/protocol/limits';
import type { Repository } from '#device/storage/repository';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { takenLimits } from '#features/sessions/rules/takenLimits';
import { recordingRecording, type ShownRecording } from '#shell/tracking/shownRecording';

/** The instant at which a repetition went farthest inward. */
export interface ReportStill {
  number: number;
  timeMs: number;
  /** Degrees, inward positive, with the half-width of its band. */
  deg: number;
  bandDeg: number;
}

/** Two repetitions of one set, to be seen side by side. */
export interface ReportStills {
  recording: ShownRecording;
  limits: Limits;
  /** Start of its session, ISO 8601. */
  startedAt: string;
  /** Least and farthest inward. */
  best: ReportStill;
  worst: ReportStill;
}

/** From the newest set whose video is kept here; null where none is, or it has no two measured repetitions. */
export async function readStills(
  { recordings, videos }: Pick<Repository, 'recordings' | 'videos'>,
  sessions: readonly ListedSession[],
): Promise<ReportStills | null> {
  const newestFirst = [...sessions].sort((a, b) => Date.parse(b.startedAt) - Date.parse(a.startedAt));
  for (const { startedAt, sets } of newestFirst) {
    const set = sets.find(({ reading }) => reading.state === 'read' && reading.hasVideo);
    const id = set?.line.sessionId ?? null;
    const found = id === null ? null : await recordings.find(id);
    const name = found?.facts.video ?? null;
    const video = name === null ? null : await videos.read(name).catch(() => null);
    if (found === null || video === null) continue;
    const kept = withTakenLimits(found.recording, takenLimits(sessions, found.recording.id));
    const recording = recordingRecording(kept, { origin: 'session', fileName: '', video });
    const measured = recording.measurement.repetitions.map((one, index) => ({
      ...one,
      excluded: recording.excluded[index] ?? undefined,
    }));
    const peaks = completeRepetitions(measured).flatMap(({ number, ranges }): ReportStill[] => {
      const { max } = ranges['knee-angle'];
      return max ? [{ number, timeMs: max.timeMs, deg: max.value, bandDeg: max.band }] : [];
    });
    if (peaks.length < 2) continue;
    const best = least(peaks, ({ deg }) => deg)!;
    const worst = greatest(peaks, ({ deg }) => deg)!;
    return { recording, limits: kept.limits, startedAt, best, worst };
  }
  return null;
}
