import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { sessionSchema } from '../session/sessionDocument';
import { checkFile } from './tools/checkInput';
import { CommandProblem } from './tools/commandProblem';
import { readArguments } from './tools/readArguments';
import { remeasureSession } from './tools/remeasureSession';
import { runCommand } from './tools/runCommand';
import { writeJson } from './tools/writeJson';

const usage = 'Usage: npm run -s remeasure -- SESSION.json (writes its derived part anew)';

/** What a session document observed; its derived part may be of any older make, since it is not read. */
const { id, createdAt, note, setup, limits, video, observed } = sessionSchema.shape;
const observedSchema = z.object({ id, createdAt, note, setup, limits, video, observed });

await runCommand(async () => {
  const [path, ...more] = readArguments({}, usage).positionals;
  if (path === undefined || more.length > 0) throw new CommandProblem(`Give one session document. ${usage}`);
  checkFile(path);
  const after = remeasureSession(readObserved(path));
  writeJson(path, after);
  console.log(`${path}: ${after.derived.repetitions.length} repetitions.`);
});

function readObserved(path: string): z.infer<typeof observedSchema> {
  let data: unknown;
  try {
    data = JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    throw new CommandProblem(`"${path}" is not JSON. Give a session document.`);
  }
  const result = observedSchema.safeParse(data);
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw new CommandProblem(
    `"${path}" is not a session document that can be measured again (${issue?.path.join('.')}: ${issue?.message}).`,
  );
}
