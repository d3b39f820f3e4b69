import type { RoleKeeper } from '#shell/createRole';
import type { PatientLanguage } from '#shell/language/createPatientLanguage';
import type { Navigation } from '#shell/navigation/createNavigation';
import { english } from '#words/messages/english';
import type { Language } from '#words/messages/languages';
import { speak, type Catalogue } from '#words/messages/message';

const catalogues: Partial<Record<Language, Catalogue>> = { en: english };

/** Fetches the messages of a language, once. */
export async function loadMessages(language: Language): Promise<void> {
  if (catalogues[language] !== undefined) return;
  const { spanish } = await import('#words/messages/spanish');
  catalogues.es = spanish;
}

/**
 * Speaks the patient's language on their own pages, and English on the others. It listens before any screen does, so
 * that a screen is drawn in its language from the beginning.
 */
export function speakOnScreens(parts: {
  navigation: Pick<Navigation, 'store'>;
  role: Pick<RoleKeeper, 'store'>;
  language: Pick<PatientLanguage, 'store'>;
  html: { lang: string };
}): void {
  const { navigation, role, language, html } = parts;
  const set = () => {
    const { screen } = navigation.store.getState();
    const isPatients = screen === 'home' || (screen === 'start' && role.store.getState().role !== 'treats');
    const wanted = isPatients ? language.store.getState().language : 'en';
    speak(wanted, catalogues[wanted] ?? english);
    html.lang = wanted;
  };
  navigation.store.subscribe(set);
  role.store.subscribe(set);
  language.store.subscribe(set);
  set();
}
