import { statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { CommandProblem } from './commandProblem';

/** @throws CommandProblem  where the path is not a readable file */
export function checkFile(path: string): void {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) throw new CommandProblem(`"${path}" does not exist. Check the path.`);
  if (!found.isFile()) throw new CommandProblem(`"${path}" is not a file. Give the path of one file.`);
}

/** @throws CommandProblem  where the path is not a folder */
export function checkFolder(path: string): void {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) throw new CommandProblem(`"${path}" does not exist. Check the path.`);
  if (!found.isDirectory())
    throw new CommandProblem(`"${path}" is not a folder. Give the folder with the clips.`);
}

/** Checked before a long run, so that its result is not lost. @throws CommandProblem */
export function checkOutput(path: string | undefined): void {
  if (path === undefined) return;
  const folder = dirname(resolve(path));
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() !== true) {
    throw new CommandProblem(
      `--json can't be written: the folder "${folder}" does not exist. Make it first.`,
    );
  }
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory() === true) {
    throw new CommandProblem(`--json can't be written: "${path}" is a folder. Give the name of a file.`);
  }
}
