import { describe, expect, it } from 'vitest';
import type { Repository } from '#device/storage/repository';
import { openNotes } from '#shell/notes';
import { createTestDevice } from '../../support/openTestRepository';

/** The place where an earlier program kept such texts. */
function earlierPlace(texts: Record<string, string>) {
  const left = new Map(Object.entries(texts));
  return {
    left,
    getItem: (name: string) => left.get(name) ?? null,
    removeItem: (name: string) => void left.delete(name),
  };
}

const opening = (repository: Repository) => () => Promise.resolve({ repository, problem: null });

describe('openNotes(openRepository, earlier)', () => {
  it('has what was written at hand at once, and again the next time', async () => {
    const device = createTestDevice();
    const notes = await openNotes(opening(await device.open()), null);
    expect(notes.read('draft')).toBeNull();
    const written = notes.write('draft', 'half a plan');
    expect(notes.read('draft')).toBe('half a plan');
    await written;
    expect((await openNotes(opening(await device.open()), null)).read('draft')).toBe('half a plan');
  });

  it('keeps the last of several that were written at once', async () => {
    const device = createTestDevice();
    const notes = await openNotes(opening(await device.open()), null);
    await Promise.all(['h', 'ha', 'half'].map((text) => notes.write('draft', text)));
    expect(await notes.readAnew('draft')).toBe('half');
    expect((await (await device.open()).notes.read()).get('draft')).toBe('half');
  });

  it('sees what another tab wrote when it reads again', async () => {
    const device = createTestDevice();
    const [one, other] = [await device.open(), await device.open()];
    const notes = await openNotes(opening(one), null);
    await other.notes.write('keys', '[1]');
    expect(notes.read('keys')).toBeNull();
    expect(await notes.readAnew('keys')).toBe('[1]');
    await other.notes.remove('keys');
    expect(await notes.readAnew('keys')).toBeNull();
  });

  it('brings texts over from where they stood before, leaves none there, and does it once', async () => {
    const device = createTestDevice();
    const earlier = earlierPlace({
      'overfoot-keys': '[{"identity":"a"}]',
      'overfoot-draft': 'old draft',
      'overfoot-removals': '[]',
    });
    const repository = await device.open();
    await repository.notes.write('draft', 'newer draft');
    const notes = await openNotes(opening(repository), earlier);
    expect(notes.read('keys')).toBe('[{"identity":"a"}]');
    expect(notes.read('draft')).toBe('newer draft');
    expect([...earlier.left.keys()]).toEqual(['overfoot-removals']);
    expect((await (await device.open()).notes.read()).get('keys')).toBe('[{"identity":"a"}]');
  });

  it('leaves them where they stood, and at hand, when they can’t be kept', async () => {
    const earlier = earlierPlace({ 'overfoot-keys': '[1]' });
    const repository = await createTestDevice().open();
    const refusing: Repository = {
      ...repository,
      notes: { ...repository.notes, write: () => Promise.reject(new Error('full')) },
    };
    const notes = await openNotes(opening(refusing), earlier);
    expect(notes.read('keys')).toBe('[1]');
    expect(earlier.left.get('overfoot-keys')).toBe('[1]');
    await expect(notes.write('draft', 'x')).rejects.toMatchObject({ name: 'StorageProblem' });
  });

  it('lasts as long as the page where nothing can be opened', async () => {
    const notes = await openNotes(() => Promise.reject(new Error('newer')), null);
    expect(notes.isLasting).toBe(false);
    await notes.write('draft', 'x');
    expect(notes.read('draft')).toBe('x');
  });
});
