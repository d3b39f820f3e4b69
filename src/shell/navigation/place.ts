export const screenNames = ['start', 'review', 'home', 'sessions', 'plan', 'mirror'] as const;
export type ScreenName = (typeof screenNames)[number];

/** One entry of the browser's history. */
export interface Place {
  screen: ScreenName;
  /** The screen that it was opened from, which the browser's Back leads to; null for the first one. */
  from: ScreenName | null;
  /** Position among the page's entries, from 0. */
  index: number;
}

/** @param state  what the browser keeps for an entry, which may be anything */
export function parsePlace(state: unknown): Place | null {
  if (typeof state !== 'object' || state === null) return null;
  const { screen, from, index } = state as Partial<Record<keyof Place, unknown>>;
  if (!isScreen(screen) || !(from === null || isScreen(from))) return null;
  if (typeof index !== 'number' || !Number.isInteger(index) || index < 0) return null;
  return { screen, from, index };
}

function isScreen(name: unknown): name is ScreenName {
  return (screenNames as readonly unknown[]).includes(name);
}
