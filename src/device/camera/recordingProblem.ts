import { message } from '#words/messages/message';

export type RecordingProblemKind = 'no-recorder' | 'camera-ended' | 'recorder-failed' | 'not-kept';

/** A recording that can't continue, with a sentence that says why and what to do. */
export class RecordingProblem extends Error {
  constructor(
    readonly kind: RecordingProblemKind,
    cause?: unknown,
  ) {
    super(kind === 'not-kept' ? notKeptSentence(cause) : message(`recording-trouble.${kind}`), { cause });
    this.name = 'RecordingProblem';
  }
}

/** Where storage gave the reason itself, its sentence is shown. */
function notKeptSentence(cause: unknown): string {
  const detail = cause instanceof Error && cause.message !== '' ? ` ${cause.message}` : '';
  return `${message('recording-trouble.not-kept')}${detail}`;
}
