export const holdIds = ['quad-press-hold'] as const;
export type HoldId = (typeof holdIds)[number];

/** A position that is held for a time; nothing of it is measured but the time. */
export interface Hold {
  id: HoldId;
  name: string;
  /** How long one hold lasts, and how often it is held, with rest between. */
  seconds: number;
  holds: number;
  restSeconds: number;
  hint: string;
}

/** Dose: common practice, no source. */
export const quadPressHold: Hold = {
  id: 'quad-press-hold',
  name: 'Quadriceps press, held',
  seconds: 30,
  holds: 3,
  restSeconds: 60,
  hint: 'Press the thigh into the ball behind it, without any pain in the knee; stop when it hurts.',
};

const holds: Record<HoldId, Hold> = { 'quad-press-hold': quadPressHold };

export function findHold(id: HoldId): Hold {
  return holds[id];
}
