import { english } from '#words/messages/english';
import type { Language } from '#words/messages/languages';
import type { Catalogue } from '#words/messages/message';

/** All messages of a language, fetched where they are not here yet. */
export async function catalogueOf(language: Language): Promise<Catalogue> {
  return language === 'en' ? english : (await import('#words/messages/spanish')).spanish;
}
