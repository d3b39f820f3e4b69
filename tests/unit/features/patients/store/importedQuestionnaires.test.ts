import { describe, expect, it } from 'vitest';
import {
  importQuestionnaire,
  readImported,
  removeImported,
} from '#features/patients/store/importedQuestionnaires';
import { createTestDevice } from '../../../../support/openTestRepository';

const file = (url: string, title: string, size = 1) => ({
  size,
  text: () =>
    Promise.resolve(
      JSON.stringify({
        resourceType: 'Questionnaire',
        url,
        title,
        item: [{ linkId: 'a', text: 'Is it?', type: 'boolean' }],
      }),
    ),
});

describe('importQuestionnaire(notes, file)', () => {
  it('keeps each once, by title, until it is removed', async () => {
    const { notes } = await createTestDevice().open();
    await importQuestionnaire(notes, file('urn:b', 'B'));
    await importQuestionnaire(notes, file('urn:a', 'A'));
    await importQuestionnaire(notes, file('urn:b', 'B again'));
    expect(readImported(await notes.read()).map(({ title }) => title)).toEqual(['A', 'B again']);
    await removeImported(notes, 'urn:a');
    expect(readImported(await notes.read()).map(({ url }) => url)).toEqual(['urn:b']);
  });

  it('refuses a large file unread, and one too many', async () => {
    const { notes } = await createTestDevice().open();
    const large = { size: 300_001, text: () => Promise.reject(new Error('was read')) };
    await expect(importQuestionnaire(notes, large)).rejects.toThrow(/larger than 300 kB/);
    for (let i = 0; i < 20; i++) await importQuestionnaire(notes, file(`urn:${i}`, `${i}`));
    await expect(importQuestionnaire(notes, file('urn:x', 'X'))).rejects.toThrow(/Remove one first/);
    expect(await importQuestionnaire(notes, file('urn:3', 'Three'))).toHaveLength(20);
  });

  it('leaves out what is damaged', async () => {
    const { notes } = await createTestDevice().open();
    for (const text of ['{', '{}', '[{"url":3}]']) {
      await notes.write('questionnaires', text);
      expect(readImported(await notes.read())).toEqual([]);
    }
  });
});
