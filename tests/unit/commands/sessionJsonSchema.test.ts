import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sessionJsonSchema } from '../../../src/commands/tools/sessionJsonSchema';

describe('sessionJsonSchema()', () => {
  it('is what docs/session.schema.json says (npm run schema writes it anew)', () => {
    const committed = readFileSync(new URL('../../../docs/session.schema.json', import.meta.url), 'utf8');
    expect(committed).toBe(sessionJsonSchema());
  });
});
