/** Places in the program's own files that are listed at most. */
const mostPlaces = 12;

/**
 * What went wrong, for whoever looks after the program. Nothing in it can tell of a person: of an error it holds
 * the kind and the places in the program, not its message, which may quote a file or a plan.
 */
export function diagnosticText(error: unknown, about: { screen: string; browser: string }): string {
  const kind = error instanceof Error && /^\w+$/.test(error.name) ? error.name : typeof error;
  const stack = error instanceof Error ? (error.stack ?? '') : '';
  // The message comes before the first place, and may hold what looks like one.
  const places = stack
    .split('\n')
    .filter((line) => /^\s*at |@/.test(line))
    .flatMap((line) => /([\w-]+\.(?:js|mjs|tsx?):\d+:\d+)\)?$/.exec(line.trim())?.[1] ?? []);
  return [
    'Overfoot, unexpected error',
    `kind: ${kind}`,
    `screen: ${about.screen}`,
    `browser: ${about.browser}`,
    ...places.slice(0, mostPlaces).map((place) => `at ${place}`),
  ].join('\n');
}
