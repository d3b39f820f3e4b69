/** What to know of a passphrase before it is chosen. */
export const passphraseHint =
  'Four or five words that do not belong together. Write them down; nobody can recover them.';
