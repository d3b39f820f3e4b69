import { IntlMessageFormat } from 'intl-messageformat';
import { english, type MessageKey } from './english';
import type { Language } from './languages';

export type { MessageKey } from './english';

/** All messages of one language. */
export type Catalogue = Readonly<Record<MessageKey, string>>;

/** Words that precede a branch of a plural or select, whose text is no placeholder. */
type Branch = 'one' | 'other' | 'left' | 'right' | 'inward' | 'item' | `=${number}`;

/** Names of the placeholders of a message. A branch of one word looks like a placeholder unless it is told apart. */
type Names<Text extends string> = Text extends `${infer Before}{${infer Rest}`
  ? (Before extends `${string}${Branch} ` ? never : NameAt<Rest>) | Names<Rest>
  : never;

/** The placeholder that begins here; null text and texts with spaces are branches. */
type NameAt<Rest extends string> = Rest extends `${infer Head}}${string}`
  ? Head extends `${infer Name}, ${'plural' | 'select' | 'selectordinal'},${string}`
    ? Name
    : Head extends '' | `${string}${' ' | '{' | '#' | '.' | ','}${string}`
      ? never
      : Head
  : never;

export type Placeholder<Key extends MessageKey> = Names<(typeof english)[Key]>;

/** What the placeholders of a message stand for; nothing where it has none. */
type Values<Key extends MessageKey, Value> = [Placeholder<Key>] extends [never]
  ? []
  : [values: Readonly<Record<Placeholder<Key>, Value>>];

let language: Language = 'en';
let catalogue: Catalogue = english;
const formats = new Map<MessageKey, IntlMessageFormat>();

/** In which language messages are given now: that of the patient on their own pages, English everywhere else. */
export function currentLanguage(): Language {
  return language;
}

/** Gives messages in another language from now on; what is shown already has to be shown again. */
export function speak(next: Language, messages: Catalogue): void {
  language = next;
  catalogue = messages;
  formats.clear();
}

/** What is said in another language than the current one, which is the current one again afterwards. */
export function saidIn<Said>(other: Language, messages: Catalogue, say: () => Said): Said {
  const before = { language, catalogue };
  speak(other, messages);
  try {
    return say();
  } finally {
    speak(before.language, before.catalogue);
  }
}

/** For dates, numbers and lists: the European English of the catalogue, or Spanish as everybody reads it. */
export function locale(): string {
  return language === 'en' ? 'en-GB' : language;
}

/** A message in the current language. */
export function message<Key extends MessageKey>(key: Key, ...values: Values<Key, string | number>): string {
  return String(formatOf(key).format(values[0]));
}

/** A message of which each line is one of a list; no line where it is empty. */
export function messageLines<Key extends MessageKey>(
  key: Key,
  ...values: Values<Key, string | number>
): string[] {
  return message(key, ...values)
    .split('\n')
    .filter((line) => line !== '');
}

/** A message with something other than text in its places, as its parts in order. */
export function messageParts<Key extends MessageKey, Part>(
  key: Key,
  ...values: Values<Key, string | number | Part>
): readonly (string | Part)[] {
  const parts: unknown = formatOf(key).format(values[0] as Record<string, never>);
  return (Array.isArray(parts) ? parts : [parts]) as (string | Part)[];
}

function formatOf(key: MessageKey): IntlMessageFormat {
  const known = formats.get(key);
  if (known !== undefined) return known;
  const format = new IntlMessageFormat(catalogue[key], locale(), undefined, { ignoreTag: true });
  formats.set(key, format);
  return format;
}
