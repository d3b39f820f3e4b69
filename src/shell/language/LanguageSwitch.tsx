import { Button } from 'react-aria-components';
import { Message } from '#ui/components/Message';
import type { Language } from '#words/messages/languages';
import { message } from '#words/messages/message';
import { usePatientLanguage, usePatientLanguageState } from './languageContext';

const other: Record<Language, Language> = { en: 'es', es: 'en' };

/** Changes to the other language, which is named in itself. */
export function LanguageSwitch() {
  const owner = usePatientLanguage();
  const { language, isMissing } = usePatientLanguageState((state) => state);
  return (
    <>
      <Button className="button button-quiet" onPress={() => void owner.choose(other[language])}>
        <span lang={other[language]}>{message('home.other-language')}</span>
      </Button>
      {isMissing && <Message kind="caution">{message('home.language-missing')}</Message>}
    </>
  );
}
