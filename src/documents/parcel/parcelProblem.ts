/** A sent session that can't be opened, with a sentence that says why and what to do. */
export class ParcelProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'ParcelProblem';
  }
}
