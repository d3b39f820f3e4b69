/** Of a limit that no study is named for, as half a sentence. */
export const noSource = 'common practice, no source';
