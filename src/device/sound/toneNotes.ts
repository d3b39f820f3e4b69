import type { ToneKind } from './toneKind';

/** One note of a tone: a sine that swells and fades. */
export interface Note {
  hz: number;
  afterMs: number;
  lengthMs: number;
  /** 0 to 1. */
  loudness: number;
}

/** The outside tone is low, soft and falling; nothing here should sound like an alarm. */
export const toneNotes: Record<ToneKind, readonly Note[]> = {
  tick: [{ hz: 880, afterMs: 0, lengthMs: 70, loudness: 0.25 }],
  outside: [
    { hz: 392, afterMs: 0, lengthMs: 220, loudness: 0.35 },
    { hz: 294, afterMs: 180, lengthMs: 380, loudness: 0.35 },
  ],
  start: [
    { hz: 523, afterMs: 0, lengthMs: 140, loudness: 0.35 },
    { hz: 784, afterMs: 120, lengthMs: 260, loudness: 0.35 },
  ],
  end: [
    { hz: 784, afterMs: 0, lengthMs: 140, loudness: 0.35 },
    { hz: 659, afterMs: 120, lengthMs: 140, loudness: 0.35 },
    { hz: 523, afterMs: 240, lengthMs: 320, loudness: 0.35 },
  ],
  pause: [{ hz: 440, afterMs: 0, lengthMs: 400, loudness: 0.3 }],
  down: [{ hz: 330, afterMs: 0, lengthMs: 120, loudness: 0.2 }],
  turn: [{ hz: 415, afterMs: 0, lengthMs: 120, loudness: 0.2 }],
  up: [{ hz: 494, afterMs: 0, lengthMs: 120, loudness: 0.2 }],
};
