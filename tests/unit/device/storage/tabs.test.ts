import { describe, expect, it } from 'vitest';
import { createMarks } from '#device/storage/marks';
import { enterTabs } from '#device/storage/tabs';

describe('enterTabs(marks)', () => {
  it('lets one tab work alone, and no two', async () => {
    const marks = createMarks(undefined);
    const first = await enterTabs(marks);
    expect(await first.alone(() => Promise.resolve('done'))).toBe('done');
    const second = await enterTabs(marks);
    for (const tabs of [first, second]) {
      await expect(tabs.assertAlone()).rejects.toMatchObject({ reason: 'other-tab' });
      await expect(tabs.alone(() => Promise.resolve('done'))).rejects.toMatchObject({ reason: 'other-tab' });
    }
  });

  it('lets a tab that is opened during such work wait until its end, even where it fails', async () => {
    const marks = createMarks(undefined);
    const first = await enterTabs(marks);
    const order: string[] = [];
    let fail = () => undefined as void;
    const working = first.alone(
      () => new Promise<void>((_, reject) => (fail = () => reject(new Error('full')))),
    );
    await new Promise((resolve) => setTimeout(resolve, 5));
    const entering = enterTabs(marks).then(() => order.push('second is in'));
    await new Promise((resolve) => setTimeout(resolve, 20));
    order.push('work ends');
    fail();
    await expect(working).rejects.toThrow('full');
    await entering;
    expect(order).toEqual(['work ends', 'second is in']);
  });
});
