import { CommandProblem } from './commandProblem';

/**
 * Runs a command and ends the process: code 0, code 2 with one line for bad input, code 1 where the program itself
 * failed.
 */
export async function runCommand(command: () => Promise<void>): Promise<void> {
  try {
    await command();
    end(process.exitCode ?? 0);
  } catch (error) {
    const isBadInput = error instanceof CommandProblem;
    console.error(isBadInput ? oneLine(error.message) : error);
    end(isBadInput ? 2 : 1);
  }
}

/** Ends once everything printed has gone out. */
function end(code: number | string): void {
  process.stdout.write('', () => process.stderr.write('', () => process.exit(code)));
}

function oneLine(text: string): string {
  return text.replace(/\s*\n\s*/g, ' ');
}
