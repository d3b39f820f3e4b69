/** What the paper says of the practice; kept on this device alone. */
export interface Practice {
  name: string;
  telephone: string;
}

/** Longest entry, characters; the form enforces the same. */
export const longestPractice = 100;

/** What was said of the practice; null where it was not asked yet. */
export function readPractice(text: string | null): Practice | null {
  const { name, telephone } = (readJson(text) ?? {}) as { name?: unknown; telephone?: unknown };
  if (typeof name !== 'string' || typeof telephone !== 'string') return null;
  return { name: name.slice(0, longestPractice), telephone: telephone.slice(0, longestPractice) };
}

export function readJson(text: string | null): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
}
