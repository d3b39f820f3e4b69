import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { frameCount, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { curveReason, curveValue } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import { mapSavedCurves } from '#core/measures/measures';
import { csvText, type Cell } from './csvText';
import { rounded } from './rounded';

const pointColumns = keypointNames.flatMap((name) => [`${name}_x_px`, `${name}_y_px`, `${name}_score`]);

const curveColumns = Object.values(
  mapSavedCurves((id, { unit }) => ({ id, unit, name: id.replaceAll('-', '_') })),
);

const names = [
  'frame',
  'time_s',
  'repetition',
  ...curveColumns.flatMap(({ name, unit }) => [`${name}_${unit.csv}`, `${name}_reason`]),
  ...pointColumns,
  'note',
];

/**
 * The frames of a recording as CSV, one per row; docs/data-out.md says what each column means.
 *
 * @param note  for demo data: that it is invented; in the first row only
 */
export function framesCsv(parts: { track: KeypointTrack; measurement: Measurement; note: string }): string {
  return csvText(names, frameRows(parts));
}

function* frameRows({ track, measurement, note }: Parameters<typeof framesCsv>[0]): Generator<Cell[]> {
  for (let frame = 0; frame < frameCount(track); frame++) {
    const timeMs = track.timesMs[frame]!;
    const sample = nearestSample(measurement, timeMs);
    yield [
      frame + 1,
      rounded(timeMs / 1000, 3),
      repetitionAt(measurement, timeMs),
      ...curveColumns.flatMap(({ id, unit }) => {
        const value = curveValue(measurement.curves[id], sample);
        return [
          rounded(value === null ? null : unit.factor * value, 2),
          curveReason(measurement.curves[id], sample),
        ];
      }),
      ...pointCells(track, frame),
      frame === 0 ? note : null,
    ];
  }
}

/** The sample nearest to a frame; the time base begins with the first frame. */
function nearestSample({ timesMs, rateHz }: Measurement, timeMs: number): number {
  const sample = Math.round(((timeMs - timesMs[0]!) * rateHz) / 1000);
  return Math.min(timesMs.length - 1, sample);
}

/** Number of the repetition that is under way, from its start to its end; null between repetitions. */
function repetitionAt({ repetitions }: Measurement, timeMs: number): number | null {
  const under = repetitions.find(({ events }) => timeMs >= events.startMs && timeMs <= events.endMs);
  return under?.number ?? null;
}

/** x, y and score of each point; a point with zero confidence was not seen and has no position. */
function pointCells({ xPx, yPx, score }: KeypointTrack, frame: number): Cell[] {
  const cells: Cell[] = [];
  for (let at = frame * keypointCount; at < (frame + 1) * keypointCount; at++) {
    const isSeen = score[at]! > 0;
    cells.push(
      isSeen ? rounded(xPx[at]!, 2) : null,
      isSeen ? rounded(yPx[at]!, 2) : null,
      rounded(score[at]!, 3),
    );
  }
  return cells;
}
