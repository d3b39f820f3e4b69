import { describe, expect, it } from 'vitest';
import { isProblem, Problem } from '#core/problem';
import { keptDocuments } from '#tools/commands/tools/fuzzCorpus';
import { fuzzedParsers } from '#tools/commands/tools/fuzzedParsers';
import { FuzzFailure, fuzzParser, kindsOf } from '#tools/commands/tools/fuzzParser';

describe('mutated documents', { timeout: 60_000 }, () => {
  it.each(fuzzedParsers())('crash no reader and slip past none: $name', async (parser) => {
    expect(await kindsOf([JSON.stringify(parser.document)], parser)).toEqual(new Set(['accepted']));
    const { accepted, refused } = await fuzzParser(parser, 200, Math.floor(Math.random() * 2 ** 31));
    expect(refused).toBeGreaterThan(3);
    expect(accepted).toBeGreaterThan(1);
  });

  it.each(fuzzedParsers())('that are kept from earlier runs still break nothing: $name', async (parser) => {
    const kept = keptDocuments(parser);
    expect(kept.length).toBeGreaterThan(1);
    expect((await kindsOf(kept, parser)).size).toBeGreaterThan(1);
  });

  it('are noticed where a reader crashes, and where it takes what is not valid', async () => {
    const [plan] = fuzzedParsers();
    const data = (text: string): { items: unknown[] } => {
      try {
        return JSON.parse(text) as { items: unknown[] };
      } catch {
        throw new Problem('plan', 'This is not a plan.');
      }
    };
    const isRefusal = (error: unknown) => isProblem(error, 'plan');
    const crashing = fuzzParser({ ...plan!, isRefusal, parse: (text) => data(text).items.length }, 200, 1);
    await expect(crashing).rejects.toThrow(FuzzFailure);
    await expect(fuzzParser({ ...plan!, isRefusal, parse: data }, 200, 1)).rejects.toThrow('accepted, but');
  });
});
