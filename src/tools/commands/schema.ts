import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { documentJsonSchema, documentSchemas } from './tools/documentJsonSchema';
import { projectRoot } from './tools/projectRoot';
import { runCommand } from './tools/runCommand';

/** Writes the JSON Schemas of the documents. */
await runCommand(async () => {
  for (const kind of Object.keys(documentSchemas) as (keyof typeof documentSchemas)[]) {
    const path = `docs/${kind}.schema.json`;
    writeFileSync(join(projectRoot, path), documentJsonSchema(kind));
    console.log(`${path} is written.`);
  }
});
