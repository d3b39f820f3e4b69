/** The same text for the same value, in whatever order the fields of its objects are; what is undefined is left out. */
export function canonicalText(value: unknown): string {
  return JSON.stringify(plain(value));
}

/** The same with the names of each object in order. */
function plain(value: unknown): unknown {
  if (Array.isArray(value)) return (value as unknown[]).map(plain);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([, one]) => one !== undefined);
  return Object.fromEntries(
    entries.sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, one]) => [key, plain(one)]),
  );
}
