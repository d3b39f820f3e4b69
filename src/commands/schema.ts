import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './tools/projectRoot';
import { runCommand } from './tools/runCommand';
import { sessionJsonSchema } from './tools/sessionJsonSchema';

/** Writes the JSON Schema of session documents. */
await runCommand(async () => {
  writeFileSync(join(projectRoot, 'docs/session.schema.json'), sessionJsonSchema());
  console.log('docs/session.schema.json is written.');
});
