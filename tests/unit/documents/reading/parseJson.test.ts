import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonBounds, parseJson, TooMuchJson } from '#documents/reading/parseJson';
import { parseRecording } from '#documents/recording/parseRecording';

describe('parseJson(text)', () => {
  it('gives what JSON.parse gives', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), (text) => {
        expect(parseJson(text)).toEqual(JSON.parse(text));
      }),
    );
  });

  it('throws what JSON.parse throws for what is not JSON', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        let isJson = true;
        try {
          JSON.parse(text);
        } catch {
          isJson = false;
        }
        if (!isJson) expect(() => parseJson(text)).toThrow(SyntaxError);
      }),
    );
  });

  it('counts no brackets, commas and escaped quotes in texts', () => {
    const text = JSON.stringify(`${'[{,"\\'.repeat(jsonBounds.depth * 2)}`);
    expect(parseJson(text)).toBe(JSON.parse(text));
    const many = JSON.stringify(','.repeat(jsonBounds.values + 1));
    expect(parseJson(many)).toHaveLength(jsonBounds.values + 1);
  });

  it.each([
    ['nested deeper than any document', '['.repeat(3_000_000)],
    ['nested deeper, and closed', `${'['.repeat(100_000)}${']'.repeat(100_000)}`],
    ['of millions of empty objects', `[${'{},'.repeat(300_000)}{}]`],
    ['of more numbers than any document', `[${'0,'.repeat(16_000_001)}0]`],
  ])('refuses a bomb %s', (_, text) => {
    expect(() => parseJson(text)).toThrow(TooMuchJson);
  });

  it('becomes a sentence where a document is read', () => {
    expect(() => parseRecording('['.repeat(1000))).toThrow(
      'This recording document holds more than one can. Save it again where it came from.',
    );
  });
});
