import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../../', import.meta.url));

export interface CommandResult {
  code: number | null;
  stdout: string;
  stderr: string;
}

/** Runs one of the project's commands as its package script does. */
export function runCommandLine(command: string, words: readonly string[]): Promise<CommandResult> {
  const program = `${root}node_modules/tsx/dist/cli.mjs`;
  // Node warns of both where the shell asks for no colours: the runner asks for them.
  const env = { ...process.env, FORCE_COLOR: undefined };
  const child = spawn(process.execPath, [program, `src/tools/commands/${command}.ts`, ...words], {
    cwd: root,
    env,
  });
  const result: CommandResult = { code: null, stdout: '', stderr: '' };
  child.stdout.on('data', (data) => (result.stdout += data));
  child.stderr.on('data', (data) => (result.stderr += data));
  return new Promise((resolve) => child.on('close', (code) => resolve({ ...result, code })));
}
