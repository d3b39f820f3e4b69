export type VideoProblemKind = 'empty' | 'not-a-video' | 'no-picture' | 'cut-off' | 'codec';

/** A file that can't be used, with a sentence that says why and what to do. */
export class VideoProblem extends Error {
  constructor(
    readonly kind: VideoProblemKind,
    message: string,
  ) {
    super(message);
    this.name = 'VideoProblem';
  }
}
