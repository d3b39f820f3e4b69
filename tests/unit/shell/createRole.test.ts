import { describe, expect, it } from 'vitest';
import { createRole } from '#shell/createRole';
import { openNotes } from '#shell/notes';
import { createTestDevice } from '../../support/openTestRepository';

describe('createRole(notes)', () => {
  it('knows nobody at first, and remembers who has said it', async () => {
    const device = createTestDevice();
    const notes = () => openNotes(async () => ({ repository: await device.open(), problem: null }), null);
    const first = createRole(await notes());
    expect(first.store.getState().role).toBeNull();
    first.choose('exercises');
    expect(first.store.getState().role).toBe('exercises');
    first.choose('treats');
    await expect.poll(async () => createRole(await notes()).store.getState().role).toBe('treats');
  });

  it('asks again where what is kept is no role', async () => {
    const notes = await openNotes(() => Promise.reject(new Error('refused')), {
      getItem: (name) => (name === 'overfoot-role' ? 'owns a dog' : null),
      removeItem: () => undefined,
    });
    expect(createRole(notes).store.getState().role).toBeNull();
  });
});
