export const screenNames = [
  'start',
  'review',
  'home',
  'sessions',
  'patients',
  'patient',
  'plan',
  'mirror',
] as const;
export type ScreenName = (typeof screenNames)[number];

/** One entry of the browser's history. */
export interface Place {
  screen: ScreenName;
  /** The screen that it was opened from, which the browser's Back leads to; null for the first one. */
  from: ScreenName | null;
  /** Id of whom or what the screen is about; null where it is about nothing in particular. */
  about: string | null;
  /** Position among the page's entries, from 0. */
  index: number;
  /** How many pages into the screen it is, where Back leads one page back first; 0 is the screen itself. */
  depth: number;
}

/** @param state  what the browser keeps for an entry, which may be anything */
export function parsePlace(state: unknown): Place | null {
  if (typeof state !== 'object' || state === null) return null;
  const { screen, from, index, about = null, depth = 0 } = state as Partial<Record<keyof Place, unknown>>;
  if (!isScreen(screen) || !(from === null || isScreen(from))) return null;
  if (!isCount(index) || !isCount(depth)) return null;
  if (!(about === null || typeof about === 'string')) return null;
  return { screen, from, about, index, depth };
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0;
}

function isScreen(name: unknown): name is ScreenName {
  return (screenNames as readonly unknown[]).includes(name);
}
