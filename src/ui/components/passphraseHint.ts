/** What to know before choosing a passphrase. */
export const passphraseHint =
  'Four or five words that do not belong together. Write them down; nobody can recover them.';
