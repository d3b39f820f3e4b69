import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { faults } from '#tools/commands/tools/faults/faults';
import { projectRoot } from '#tools/commands/tools/projectRoot';

const text = readFileSync(`${projectRoot}/docs/reliability.md`, 'utf8');
/** First cells of the table of those that the command tries. */
const listed = [
  ...text
    .slice(text.indexOf('## Tried by the command'))
    .split('\n## ', 2)
    .join('\n')
    .matchAll(/^\| `([a-z0-9-]+)` /gm),
].map(([, name]) => name!);

describe('faults', () => {
  it('have names of their own, each with a line in docs/reliability.md, and no line is without a fault', () => {
    const names = faults.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(listed.toSorted()).toEqual(names.toSorted());
  });
});
