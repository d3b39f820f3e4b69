/** Bad input to a command: one sentence that says what is wrong and what to do. The command ends with code 2. */
export class CommandProblem extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'CommandProblem';
  }
}
