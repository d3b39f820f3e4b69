import { describe, expect, it } from 'vitest';
import { createTogether } from '#device/storage/createTogether';

function counted(fails: (keys: readonly string[]) => boolean = () => false) {
  const asked: { table: string; keys: string[] }[] = [];
  const read = createTogether((table: string, keys: string[]) => {
    asked.push({ table, keys: [...keys] });
    return fails(keys)
      ? Promise.reject(new Error(`Can't read ${keys.join()}`))
      : Promise.resolve(keys.map((key) => `${table} ${key}`));
  });
  return { read, asked };
}

describe('createTogether(readAll)', () => {
  it('reads what is asked for in one go at once, by table, and gives each its own', async () => {
    const { read, asked } = counted();
    const rows = await Promise.all([read('a', '1'), read('b', '1'), read('a', '2'), read('a', '1')]);
    expect(rows).toEqual(['a 1', 'b 1', 'a 2', 'a 1']);
    expect(asked).toEqual([
      { table: 'a', keys: ['1', '2', '1'] },
      { table: 'b', keys: ['1'] },
    ]);
  });

  it('reads anew what is asked for later', async () => {
    const { read, asked } = counted();
    await read('a', '1');
    await read('a', '1');
    expect(asked).toHaveLength(2);
  });

  it('reads the others where one of them can’t be read', async () => {
    const { read } = counted((keys) => keys.includes('broken'));
    const [one, broken, two] = await Promise.allSettled([
      read('a', '1'),
      read('a', 'broken'),
      read('a', '2'),
    ]);
    expect(one).toMatchObject({ value: 'a 1' });
    expect(two).toMatchObject({ value: 'a 2' });
    expect(broken).toMatchObject({ status: 'rejected', reason: { message: "Can't read broken" } });
  });
});
