/** What could not be used: a recording or session document, a plan, another file, a video, or the device's storage. */
export type ProblemKind = 'recording' | 'session' | 'plan' | 'file' | 'video' | 'storage';

/** Something that can't be used, with a sentence that says why and what to do. */
export class Problem extends Error {
  constructor(
    readonly kind: ProblemKind,
    message: string,
    options?: ErrorOptions,
  ) {
    super(message, options);
    this.name = 'Problem';
  }
}

/** Whether what was thrown is a problem of one of these kinds. */
export function isProblem(error: unknown, ...kinds: ProblemKind[]): error is Problem {
  return error instanceof Problem && kinds.includes(error.kind);
}
