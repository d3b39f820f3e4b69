import { buildKeypointTrack, type KeypointTrack, type TimedRow } from './keypointTrack';

/** The last moments of a live picture. */
export interface SlidingTrack {
  /** Takes in a frame, and lets go of those that have left the window. */
  push(frame: TimedRow): void;
  /** Time of the newest frame, ms; null where there is none. */
  lastMs(): number | null;
  /** Lets go of all frames. */
  clear(): void;
  /**
   * The frames in the window as a track, to keep.
   *
   * @param widthPx  picture size as displayed, px
   * @throws RangeError where times do not increase or a row has the wrong length
   */
  read(widthPx: number, heightPx: number): KeypointTrack;
}

/** @param windowMs  a frame stays until one comes that is this much later, ms */
export function createSlidingTrack(windowMs: number): SlidingTrack {
  let rows: TimedRow[] = [];
  return {
    push({ timeMs, row }) {
      rows = rows.filter((earlier) => earlier.timeMs > timeMs - windowMs);
      rows.push({ timeMs, row });
    },
    lastMs: () => rows.at(-1)?.timeMs ?? null,
    clear() {
      rows = [];
    },
    read: (widthPx, heightPx) => buildKeypointTrack(widthPx, heightPx, rows),
  };
}
