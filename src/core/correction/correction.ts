import type { KeypointName } from '../keypoints/keypointNames';
import type { Side } from '../protocol/side';

/** What one correction changes. Repetitions are identified by a time within them, so renumbering does not matter. */
export type CorrectionChange =
  | { kind: 'exclude'; atMs: number; reason: string }
  | { kind: 'include'; atMs: number }
  /** The second part starts at `atMs`. */
  | { kind: 'split'; atMs: number }
  /** `withMs` is a time within the other repetition. */
  | { kind: 'join'; atMs: number; withMs: number }
  /** An edge of the loaded time. */
  | { kind: 'move-edge'; atMs: number; edge: 'start' | 'end'; toMs: number }
  /** A point by the network's name, at a share of the width and height of the picture as recorded. */
  | { kind: 'move-point'; timeMs: number; point: KeypointName; xNorm: number; yNorm: number }
  | { kind: 'working-side'; side: Side }
  | { kind: 'mirrored'; isMirrored: boolean };

/** A change with who made it, and when. */
export interface Correction {
  change: CorrectionChange;
  /** Initials or a role; empty where none was given. */
  by: string;
  /** ISO 8601. */
  at: string;
}
