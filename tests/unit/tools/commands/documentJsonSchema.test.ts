import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { documentJsonSchema } from '#tools/commands/tools/documentJsonSchema';

describe('documentJsonSchema(kind)', () => {
  it.each(['library', 'patient', 'plan', 'recording', 'session'] as const)(
    'is what docs/%s.schema.json says (npm run schema writes it)',
    (kind) => {
      const committed = readFileSync(
        new URL(`../../../../docs/${kind}.schema.json`, import.meta.url),
        'utf8',
      );
      expect(committed).toBe(documentJsonSchema(kind));
    },
  );
});
