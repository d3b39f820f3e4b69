import { describe, expect, it } from 'vitest';
import { createPatientLanguage } from '#shell/language/createPatientLanguage';

/** Notes that hold one text. */
function notesWith(text: string | null) {
  const kept = { text };
  return {
    kept,
    read: () => kept.text,
    write: (_: string, next: string) => Promise.resolve(void (kept.text = next)),
  };
}

const loaded = () => Promise.resolve();
const nowhere = () => Promise.reject(new Error('no network'));

describe('createPatientLanguage(notes, load)', () => {
  it('is English for a newcomer, and follows the plan from then on', async () => {
    const notes = notesWith(null);
    const language = await createPatientLanguage(notes, loaded);
    expect(language.store.getState().language).toBe('en');
    await language.follow('es');
    expect(language.store.getState().language).toBe('es');
    const again = await createPatientLanguage(notes, loaded);
    expect(again.store.getState().language).toBe('es');
    await again.follow('en');
    expect(again.store.getState().language).toBe('en');
  });

  it('stays with what the patient chose, whatever plan comes', async () => {
    const notes = notesWith(null);
    const language = await createPatientLanguage(notes, loaded);
    await language.follow('es');
    await language.choose('en');
    await language.follow('es');
    expect(language.store.getState().language).toBe('en');
    const again = await createPatientLanguage(notes, loaded);
    await again.follow('es');
    expect(again.store.getState().language).toBe('en');
  });

  it('says that a language is missing, and stays with the one that is there', async () => {
    const language = await createPatientLanguage(notesWith('plan es'), nowhere);
    expect(language.store.getState()).toEqual({ language: 'en', isMissing: true });
  });

  it.each(['', 'es', 'chosen xx', 'plan'])('takes a damaged note (%j) for none', async (text) => {
    const language = await createPatientLanguage(notesWith(text), loaded);
    expect(language.store.getState()).toEqual({ language: 'en', isMissing: false });
  });
});
