import IntlMessageFormat from 'intl-messageformat';

type Values = Record<string, string | number>;
/** Each class of plurals in English and Spanish, and the numbers that messages name one by one. */
const counts = [0, 1, 2, 3, 4, 5, 6, 7, 10, 11, 12, 13, 21, 22, 101, 1_000_000];

/** The kinds of a message's parts, as its parser numbers them. */
const kind = { text: 0, argument: 1, select: 5, plural: 6 } as const;

interface Part {
  type: number;
  value?: string;
  options?: Record<string, { value: Part[] }>;
}

const partsOf = (text: string) =>
  new IntlMessageFormat(text, 'en', undefined, { ignoreTag: true }).getAst() as Part[];

/** Placeholders of a message, by name: the values that lead through each of its branches. */
export function placeholdersOf(text: string): Map<string, (string | number)[]> {
  const found = new Map<string, (string | number)[]>();
  const walk = (parts: readonly Part[]) => {
    for (const { type, value = '', options = {} } of parts) {
      if (type === kind.text || type === 7) continue;
      const before = found.get(value) ?? [];
      if (type === kind.select) found.set(value, [...new Set([...before, ...Object.keys(options)])]);
      else if (type === kind.plural) found.set(value, counts);
      else if (before.length === 0) found.set(value, [`⟨${value}⟩`]);
      for (const option of Object.values(options)) walk(option.value);
    }
  };
  walk(partsOf(text));
  return found;
}

/** A message with every combination of its selects, and with each of its plurals in turn, first values elsewhere. */
export function casesOf(text: string): Values[] {
  const placeholders = [...placeholdersOf(text)];
  let cases: Values[] = [Object.fromEntries(placeholders.map(([name, [first]]) => [name, first!]))];
  for (const [name, values] of placeholders) {
    const isNumber = typeof values[0] === 'number';
    const varied = isNumber ? cases.slice(0, 8) : cases;
    cases = [
      ...cases,
      ...varied.flatMap((one) => values.slice(1).map((value) => ({ ...one, [name]: value }))),
    ];
  }
  return cases;
}

export function format(text: string, locale: string, values: Values): string {
  return String(new IntlMessageFormat(text, locale, undefined, { ignoreTag: true }).format(values));
}
