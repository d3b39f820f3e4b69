import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { english } from '#words/messages/english';
import type { Language } from '#words/messages/languages';
import { speak, type Catalogue } from '#words/messages/message';
import { catalogueOf } from './catalogueOf';

/**
 * In which language the sheet is drawn just now: English on the screen, which the therapist reads, and the patient's
 * while it is printed.
 */
export function useSheetLanguage(language: Language): Language {
  const [now, setNow] = useState<Language>('en');
  useEffect(() => {
    if (language === 'en') return;
    let catalogue: Catalogue | null = null;
    void catalogueOf(language).then((fetched) => (catalogue = fetched));
    const show = (next: Language, messages: Catalogue) => {
      speak(next, messages);
      document.documentElement.lang = next;
      flushSync(() => setNow(next));
    };
    const before = () => catalogue !== null && show(language, catalogue);
    const after = () => show('en', english);
    addEventListener('beforeprint', before);
    addEventListener('afterprint', after);
    return () => {
      removeEventListener('beforeprint', before);
      removeEventListener('afterprint', after);
    };
  }, [language]);
  return now;
}
