import type { SessionDocument } from './sessionDocument';

/** What a session document says of the body, beside pain, where nothing was asked. */
export const notAsked: Pick<
  SessionDocument,
  | 'painLimit'
  | 'painBySide'
  | 'check'
  | 'afterLast'
  | 'wentOnAbove'
  | 'endedBecause'
  | 'settles'
  | 'isUnfilmed'
  | 'silence'
> = {
  painLimit: null,
  painBySide: null,
  check: null,
  afterLast: null,
  wentOnAbove: [],
  endedBecause: null,
  settles: [],
  isUnfilmed: false,
  silence: null,
};
