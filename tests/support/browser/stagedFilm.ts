import { mirrorRow } from '#core/correction/mirrorTrack';
import { keypointCount } from '#core/keypoints/keypointNames';
import { buildKeypointTrack, frameCount, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { filmPerson } from '../syntheticPerson';

export const stagedSize = { widthPx: 360, heightPx: 640 };
const camera = { ...stagedSize, focalPx: 615 };
const frameMs = 1000 / 30;

export const stagedParts = [
  'stand',
  'sit',
  'work',
  'nobody',
  'other-person',
  'poster',
  'mirror-image',
] as const;
export type StagedPart = (typeof stagedParts)[number];

/** The frames of each part in the film, from the first one to before the last one. */
export type StagedFrames = Record<StagedPart, { from: number; until: number }>;

/** An invented person in parts that a staged camera shows when they are wanted, and the joints of all its frames. */
export interface StagedFilm {
  track: KeypointTrack;
  frames: StagedFrames;
}

/**
 * Films what happens in a set: a quiet stand, quiet sitting, two sit-to-stands with the right leg, an empty room, the
 * same two movements by somebody shorter, a person on a poster, and the mirror image of the movements.
 */
export function filmStage(): StagedFilm {
  const stand = filmPerson({ task: 'two-legged-bend', side: 'right', repetitions: [{ peakDeg: 2 }], camera });
  const work = filmSets(1.7);
  const parts: Record<StagedPart, (Float32Array | null)[]> = {
    stand: rowsOf(stand.track).slice(0, 20),
    sit: rowsOf(work).slice(0, 20),
    work: rowsOf(work),
    nobody: [null],
    'other-person': rowsOf(filmSets(1.45)),
    poster: rowsOf(stand.track).slice(0, 1).map(onWall),
    'mirror-image': rowsOf(work).map((row) => mirrorRow(row, stagedSize.widthPx)),
  };
  const rows: (Float32Array | null)[] = [];
  const frames = {} as StagedFrames;
  for (const part of stagedParts) {
    frames[part] = { from: rows.length, until: rows.length + parts[part].length };
    rows.push(...parts[part]);
  }
  const timed = rows.map((row, frame) => ({ timeMs: frame * frameMs, row }));
  return { track: buildKeypointTrack(stagedSize.widthPx, stagedSize.heightPx, timed), frames };
}

/** Somebody as on a poster: half as large, in the upper corner. */
function onWall(row: Float32Array): Float32Array {
  return row.map((value, at) => (at % 3 === 2 ? value : value / 2));
}

function filmSets(bodyHeightM: number): KeypointTrack {
  return filmPerson({
    task: 'split-stance-sit-to-stand',
    side: 'right',
    bodyHeightM,
    repetitions: [2, 9].map((peakDeg) => ({ peakDeg, movingMs: 2400 })),
    restMs: 700,
    camera,
    noisePx: 0.3,
  }).track;
}

function rowsOf({ xPx, yPx, score, ...track }: KeypointTrack): Float32Array[] {
  return Array.from({ length: frameCount({ xPx, yPx, score, ...track }) }, (_, frame) => {
    const row = new Float32Array(keypointCount * 3);
    for (let point = 0; point < keypointCount; point++) {
      const at = frame * keypointCount + point;
      row.set([xPx[at]!, yPx[at]!, score[at]!], point * 3);
    }
    return row;
  });
}
