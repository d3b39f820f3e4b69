/** Prefix of the mark that a tab holds while it records a set. */
export const setMark = 'overfoot-set:';
