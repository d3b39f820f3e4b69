import { afterEach, expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { loadMessages, speakOnScreens } from '#app/speakOnScreens';
import type { Role } from '#shell/createRole';
import type { NavigationState } from '#shell/navigation/createNavigation';
import { english } from '#words/messages/english';
import type { Language } from '#words/messages/languages';
import { message, speak } from '#words/messages/message';

afterEach(() => speak('en', english));

it('speaks the language of the patient on their own pages, and English to therapists', async () => {
  await loadMessages('es');
  const navigation = {
    store: createStore<NavigationState>(() => ({
      screen: 'start',
      from: null,
      about: null,
      index: 0,
      depth: 0,
      question: null,
    })),
  };
  const role = { store: createStore<{ role: Role | null }>(() => ({ role: null })) };
  const language = {
    store: createStore<{ language: Language; isMissing: boolean }>(() => ({
      language: 'es',
      isMissing: false,
    })),
  };
  const html = { lang: '' };
  speakOnScreens({ navigation, role, language, html });
  expect([html.lang, message('start.exercise')]).toEqual(['es', 'Hago ejercicio']);
  role.store.setState({ role: 'treats' });
  expect([html.lang, message('start.exercise')]).toEqual(['en', 'I exercise']);
  navigation.store.setState({ screen: 'home' });
  expect(html.lang).toBe('es');
  navigation.store.setState({ screen: 'sessions' });
  expect([html.lang, message('verdict.in')]).toEqual(['en', 'in line']);
  navigation.store.setState({ screen: 'home' });
  language.store.setState({ language: 'en' });
  expect([html.lang, message('home.back')]).toEqual(['en', 'Back']);
});
