import fc from 'fast-check';

/** What a parser is least ready for. */
const oddValues: readonly unknown[] = [
  ...[null, true, '', 0, -1, -0, 0.5, 1e308, -1e308, 5e-324, 2 ** 53, [], {}, [[]], [null]],
  ...['<script>alert(1)</script>', '=1+1', '../../etc/passwd', '\u0000', '\ud800', 'x'.repeat(5000)],
  ...['__proto__', 'constructor', '2026-02-30T00:00:00Z', '11111111-2222-4333-8444-555555555555'],
];
const oddKeys = ['__proto__', 'constructor', 'toString', 'length', '0', ''];

/** One mutation: where in a document, and what. */
interface Mutation {
  /** Which of all places, and which neighbour, as a share of them. */
  place: number;
  other: number;
  what: 'replace' | 'delete' | 'add' | 'copy' | 'repeat' | 'scale';
  value: unknown;
  key: string;
}

/** Evenly from 0 to 1; fc.double would nearly always give a number close to 0. */
const share = fc.integer({ min: 0, max: 99_999 }).map((part) => part / 100_000);

const mutation: fc.Arbitrary<Mutation> = fc.record({
  place: share,
  other: share,
  what: fc.constantFrom('replace', 'delete', 'add', 'copy', 'repeat', 'scale'),
  value: fc.oneof(fc.constantFrom(...oddValues), fc.jsonValue({ maxDepth: 2 }) as fc.Arbitrary<unknown>),
  key: fc.constantFrom(...oddKeys),
});

/** Mutations of the text itself. */
const textChange = fc.oneof(
  { weight: 8, arbitrary: fc.constant((text: string) => text) },
  {
    weight: 1,
    arbitrary: fc.nat(1000).map((at) => (text: string) => text.slice(0, (at * text.length) / 1000)),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.nat(999), fc.string({ minLength: 1, maxLength: 3 }))
      .map(([at, put]) => (text: string) => {
        const from = Math.floor((at * text.length) / 1000);
        return text.slice(0, from) + put + text.slice(from + 1);
      }),
  },
);

/** A document's text with one to four mutations: values, keys, lists, and sometimes the text itself. */
export function mutatedText(document: unknown): fc.Arbitrary<string> {
  return fc
    .tuple(fc.array(mutation, { minLength: 1, maxLength: 4 }), textChange)
    .map(([mutations, change]) => {
      const root = { document: structuredClone(document) };
      for (const one of mutations) mutate(root, one);
      return change(JSON.stringify(root.document) ?? '');
    });
}

type Holder = Record<string, unknown>;

function mutate(root: Holder, { place, other, what, value: given, key }: Mutation): void {
  const value = structuredClone(given); // The next document begins from the same list of values.
  const places = allPlaces(root);
  const at = places[Math.floor(place * places.length)];
  const from = places[Math.floor(other * places.length)];
  if (at === undefined || from === undefined) return; // Nothing is left of it.
  const here = at.holder[at.key];
  if (what === 'replace') at.holder[at.key] = value;
  else if (what === 'delete') {
    if (Array.isArray(at.holder)) at.holder.splice(Number(at.key), 1);
    else delete at.holder[at.key];
  } else if (what === 'copy') at.holder[at.key] = structuredClone(from.holder[from.key]);
  else if (what === 'scale' && typeof here === 'number') at.holder[at.key] = here * 1000;
  else if (what === 'repeat' && Array.isArray(here) && here.length < 2000)
    here.push(...(structuredClone(here) as unknown[]));
  else if (Array.isArray(here)) here.push(value);
  else if (typeof here === 'object' && here !== null)
    // As JSON.parse makes it: a field of its own, whatever its name.
    Object.defineProperty(here, key, { value, enumerable: true, configurable: true, writable: true });
}

/** All places of a document; of long lists of numbers the first few, which are read like the rest. */
function allPlaces(root: Holder): { holder: Holder; key: string }[] {
  const places: { holder: Holder; key: string }[] = [];
  const session = (holder: Holder) => {
    for (const key of Object.keys(holder).slice(0, 12)) {
      places.push({ holder, key });
      const value = holder[key];
      if (typeof value === 'object' && value !== null) session(value as Holder);
    }
  };
  session(root);
  return places;
}
