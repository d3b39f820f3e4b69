import { describe, expect, it } from 'vitest';
import type { Repository } from '#device/storage/repository';
import { withEntry } from '#documents/library/libraryChanges';
import { emptyLibrary, type LibraryDocument } from '#documents/library/libraryDocument';
import { createTestDevice } from '../../../support/openTestRepository';

const words = {
  id: '1b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11',
  at: '2026-04-01T06:00:00.000Z',
  by: 'AB',
  name: 'First weeks',
  text: 'Little and often.',
};
const stages = [{ id: 'short', words: 'Ten seconds.', holds: { count: 3, seconds: 10 } }];
const earlierStages = JSON.stringify({
  format: 'overfoot-stages',
  version: 1,
  exercises: { 'wall-sit-hold': stages },
});
const withWords = (library: LibraryDocument) => withEntry(library, 'texts', words);
const noteOf = async ({ notes }: Repository, name: string) => (await notes.read()).get(name);

describe('createKeptLibrary(records)', () => {
  it('is empty at first, and keeps what changes, without two tabs losing each other’s', async () => {
    const device = createTestDevice();
    const [one, other] = [await device.open(), await device.open()];
    expect((await one.library.read()).library).toEqual(emptyLibrary);
    expect(await noteOf(one, 'library')).toBeUndefined();
    const texts = (digit: number) => ({
      ...words,
      id: `${digit}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`,
      at: `2026-04-0${digit}T06:00:00.000Z`,
    });
    await Promise.all([
      one.library.change((library) => withEntry(library, 'texts', texts(1))),
      other.library.change((library) => withEntry(library, 'texts', texts(2))),
      one.library.change((library) => withEntry(library, 'texts', texts(3))),
    ]);
    expect((await other.library.read()).library.texts).toEqual([texts(1), texts(2), texts(3)]);
  });

  it('takes earlier stages over once, and their note is gone with that', async () => {
    const device = createTestDevice();
    const repository = await device.open();
    await repository.notes.write('stages', earlierStages);
    const { library } = await repository.library.read();
    const entry = { exercise: 'wall-sit-hold', at: '1970-01-01T00:00:00.000Z', by: '', stages };
    expect(library.stages).toEqual([entry]);
    expect(await noteOf(repository, 'stages')).toBeUndefined();
    expect(JSON.parse((await noteOf(repository, 'library'))!)).toEqual({ ...emptyLibrary, stages: [entry] });
    expect((await (await device.open()).library.read()).library).toEqual(library);
  });

  it('writes nothing over a library or stages that can’t be read', async () => {
    const repository = await createTestDevice().open();
    await repository.notes.write('stages', '{"format":"overfoot-stages","version":9}');
    expect(await repository.library.read()).toMatchObject({
      library: emptyLibrary,
      hasUnreadableStages: true,
    });
    await repository.library.change(withWords);
    expect(await noteOf(repository, 'stages')).toContain('"version":9');
    expect((await repository.library.read()).library.texts).toEqual([words]);

    await repository.notes.write('library', '{"format":"overfoot-library","version":9}');
    await expect(repository.library.read()).rejects.toThrow(/can’t be read, and was left as it is/);
    await expect(repository.library.change(withWords)).rejects.toThrow(/can’t be read/);
    expect(await noteOf(repository, 'library')).toContain('"version":9');
  });

  it('refuses to keep what it could not read again', async () => {
    const repository = await createTestDevice().open();
    await repository.library.change(withWords);
    const invalid = (library: LibraryDocument) => ({ ...library, texts: [words, words] });
    await expect(repository.library.change(invalid)).rejects.toThrow(/same entry twice/);
    expect((await repository.library.read()).library.texts).toEqual([words]);
  });
});
