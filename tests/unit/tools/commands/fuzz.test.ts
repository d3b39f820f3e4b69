import { describe, expect, it } from 'vitest';
import { isProblem, Problem } from '#core/problem';
import { fuzzedParsers } from '#tools/commands/tools/fuzzedParsers';
import { fuzzParser } from '#tools/commands/tools/fuzzParser';

describe('mutated documents', { timeout: 60_000 }, () => {
  it.each(fuzzedParsers())('crash no reader and slip past none: $name', (parser) => {
    expect(() => parser.parse(JSON.stringify(parser.document))).not.toThrow();
    const { accepted, refused } = fuzzParser(parser, 300, Math.floor(Math.random() * 2 ** 31));
    expect(refused).toBeGreaterThan(100);
    expect(accepted).toBeGreaterThan(3);
  });

  it('are noticed where a reader crashes, and where it takes what is not valid', () => {
    const [plan] = fuzzedParsers();
    const data = (text: string): { items: unknown[] } => {
      try {
        return JSON.parse(text) as { items: unknown[] };
      } catch {
        throw new Problem('plan', 'This is not a plan.');
      }
    };
    const isRefusal = (error: unknown) => isProblem(error, 'plan');
    expect(() =>
      fuzzParser({ ...plan!, isRefusal, parse: (text) => data(text).items.length }, 200, 1),
    ).toThrow();
    expect(() => fuzzParser({ ...plan!, isRefusal, parse: data }, 200, 1)).toThrow();
  });
});
