import { describe, expect, it } from 'vitest';
import { openOnce } from '#shell/openOnce';

describe('openOnce(open)', () => {
  it('opens once for all who ask', async () => {
    let opened = 0;
    const ask = openOnce(() => Promise.resolve(++opened));
    expect(await Promise.all([ask(), ask()])).toEqual([1, 1]);
    expect(await ask()).toBe(1);
  });

  it('tries again after a failure', async () => {
    let tries = 0;
    const ask = openOnce(() => (++tries === 1 ? Promise.reject(new Error('busy')) : Promise.resolve(tries)));
    await expect(ask()).rejects.toThrow('busy');
    expect(await ask()).toBe(2);
  });
});
