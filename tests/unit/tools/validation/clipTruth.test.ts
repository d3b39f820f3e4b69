import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseClipTruth } from '#tools/validation/clipTruth';

describe('parseClipTruth(text)', () => {
  it('reads the fixtures', () => {
    const text = readFileSync(new URL('../../../../fixtures/short.truth.json', import.meta.url), 'utf8');
    const { truth } = parseClipTruth(text);
    expect(truth?.reps.map(({ liftOff }) => liftOff?.toFixed(2))).toEqual(['1.18', '5.48']);
    expect(truth?.perFrame).toHaveLength(282);
  });

  it('says why a text is no truth', () => {
    expect(parseClipTruth('{').problem).toBe('it is not JSON');
    expect(parseClipTruth('{"task":"hopping"}').problem).toContain('task');
  });
});
