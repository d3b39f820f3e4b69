import { keyWords } from '#words/keyWords';

/** A key as words that two people can compare. */
export function KeyWords({ of: key }: { of: string }) {
  return <strong className="key-words">{keyWords(key)}</strong>;
}
