import { Fragment } from 'react';
import { keyWords } from '#words/keyWords';

/** A key, or each of several, as words that two people can compare. */
export function KeyWords({ of }: { of: string | readonly string[] }) {
  const keys = typeof of === 'string' ? [of] : of;
  return keys.map((key, index) => (
    <Fragment key={key}>
      {index > 0 && '; '}
      <strong className="key-words">{keyWords(key)}</strong>
    </Fragment>
  ));
}
