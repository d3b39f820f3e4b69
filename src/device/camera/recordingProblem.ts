export type RecordingProblemKind = 'no-recorder' | 'camera-ended' | 'recorder-failed' | 'not-kept';

const sentences: Record<Exclude<RecordingProblemKind, 'not-kept'>, string> = {
  'no-recorder':
    'This browser can’t record video. Update it or use another one, or record with the device’s own camera app and ' +
    'open the file here.',
  'camera-ended':
    'The camera stopped giving pictures, so the recording ended. What was recorded until then is kept. Check the camera, ' +
    'then start the set again.',
  'recorder-failed':
    'The browser’s recorder stopped. What was recorded until then is kept. Start the set again; if the recorder stops again, ' +
    'reload the page.',
};

/** A recording that can't continue, with a sentence that says why and what to do. */
export class RecordingProblem extends Error {
  constructor(
    readonly kind: RecordingProblemKind,
    cause?: unknown,
  ) {
    super(kind === 'not-kept' ? notKeptSentence(cause) : sentences[kind], { cause });
    this.name = 'RecordingProblem';
  }
}

/** Where storage gave the reason itself, its sentence is shown. */
function notKeptSentence(cause: unknown): string {
  const detail = cause instanceof Error && cause.message !== '' ? ` ${cause.message}` : '';
  return `The recording ended because the video could not be kept. What was kept until then stays.${detail}`;
}
