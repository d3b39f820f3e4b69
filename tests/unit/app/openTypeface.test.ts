import { describe, expect, it, vi } from 'vitest';
import { openTypeface } from '#app/openTypeface';

describe('openTypeface', () => {
  it('waits for both weights', async () => {
    const come: (() => void)[] = [];
    const asked: string[] = [];
    let isOpen = false;
    const opening = openTypeface({
      load: (font) => {
        asked.push(font);
        return new Promise((resolve) => come.push(() => resolve([])));
      },
    }).then(() => (isOpen = true));
    expect(asked).toEqual(['400 1em "Atkinson Hyperlegible"', '700 1em "Atkinson Hyperlegible"']);
    come[0]!();
    await Promise.resolve();
    expect(isOpen).toBe(false);
    come[1]!();
    await opening;
    expect(isOpen).toBe(true);
  });

  it('is over where the typeface can’t be fetched', async () => {
    await openTypeface({ load: () => Promise.reject(new Error('no network')) });
  });

  it('waits a second, and no longer', async () => {
    vi.useFakeTimers();
    try {
      let isOver = false;
      void openTypeface({ load: () => new Promise(() => undefined) }).then(() => (isOver = true));
      await vi.advanceTimersByTimeAsync(999);
      expect(isOver).toBe(false);
      await vi.advanceTimersByTimeAsync(1);
      expect(isOver).toBe(true);
    } finally {
      vi.useRealTimers();
    }
  });
});
