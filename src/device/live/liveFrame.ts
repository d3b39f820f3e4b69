import type { KeypointRow } from '#core/keypoints/keypointTrack';

/** What was seen in one picture of the camera. */
export interface LiveFrame {
  /** When the camera took the picture, ms on the page's own clock; strictly increasing. */
  timeMs: number;
  /** px of the camera's picture; null where nobody was found. */
  row: KeypointRow | null;
  /** Size of the camera's picture as displayed, px; changes when a phone is turned. */
  widthPx: number;
  heightPx: number;
}
