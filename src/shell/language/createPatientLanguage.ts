import { createStore, type StoreApi } from 'zustand/vanilla';
import { languages, type Language } from '#words/messages/languages';
import type { Notes } from '../notes';

export interface PatientLanguage {
  readonly store: StoreApi<LanguageState>;
  /** The patient wants it, whatever the plan says; remembered on this device. */
  choose(language: Language): Promise<void>;
  /** A plan was opened that is in this language; the patient's own choice counts more. */
  follow(language: Language): Promise<void>;
}

interface LanguageState {
  /** Its messages are here. */
  language: Language;
  /** Whether another one was wanted, and its messages could not be fetched. */
  isMissing: boolean;
}

/** Who wanted a language, and which: 'chosen es', 'plan es'. */
const noteForm = /^(chosen|plan) (\w+)$/;

/**
 * In which language a patient reads and hears everything.
 *
 * @param load  fetches the messages of a language; rejects where they can't be had
 */
export async function createPatientLanguage(
  notes: Pick<Notes, 'read' | 'write'>,
  load: (language: Language) => Promise<unknown>,
): Promise<PatientLanguage> {
  const [, by, kept] = noteForm.exec(notes.read('language') ?? '') ?? [];
  let isChosen = by === 'chosen';
  const store = createStore<LanguageState>(() => ({ language: 'en', isMissing: false }));
  const show = async (language: Language) => {
    try {
      await load(language);
      store.setState({ language, isMissing: false });
    } catch {
      store.setState({ isMissing: true });
    }
  };
  const keep = (language: Language) =>
    void notes.write('language', `${isChosen ? 'chosen' : 'plan'} ${language}`).catch(() => undefined); // Asked for again.
  const known = languages.find((language) => language === kept);
  if (known !== undefined && known !== 'en') await show(known);

  return {
    store,
    async choose(language) {
      isChosen = true;
      keep(language);
      await show(language);
    },
    async follow(language) {
      if (isChosen) return;
      keep(language);
      await show(language);
    },
  };
}
