import { describe, expect, it } from 'vitest';
import { sessionResult } from '#features/home/rules/sessionResult';

const set = (inLineShare: number | null, faults: number | null) => ({
  summary: { well: 'Well.', practise: 'Practise.', unmeasured: null, inLineShare, faults },
});

describe('sessionResult(sets)', () => {
  it('praises the set with most in line, and practises what went off most often', () => {
    const [plain, good, off] = [set(0.5, 1), set(0.9, 0), set(0.4, 3)];
    const result = sessionResult([plain, good, off]);
    expect(result?.well).toBe(good);
    expect(result?.practise).toBe(off);
  });

  it('prefers what could be told to what could not', () => {
    const [unseen, seen] = [set(null, null), set(0.2, 0)];
    expect(sessionResult([unseen, seen])).toEqual({ well: seen, practise: seen });
    expect(sessionResult([unseen])).toEqual({ well: unseen, practise: unseen });
    expect(sessionResult([])).toBeNull();
  });
});
