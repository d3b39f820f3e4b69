/** A session document that can't be read, with a sentence that says why and what to do. */
export class RecordingFileProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'SessionProblem';
  }
}
