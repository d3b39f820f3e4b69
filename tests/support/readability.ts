import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** Sentences end with these; so does each part of a list that is set apart by semicolons. */
const sentenceEnd = /(?<=[.!?…;:])\s+|\n/;

/** Words of a text; numbers count as words. */
const wordsOf = (text: string) => text.match(/[\p{L}\d]+(?:[’-][\p{L}\d]+)*/gu) ?? [];

const sentencesOf = (text: string) => text.split(sentenceEnd).filter((part) => wordsOf(part).length > 0);

/**
 * School grade of the United States that reads a text (Flesch-Kincaid); readers of grade 7 are about 12.
 *
 * @param exempt  words that are no longer counted by their syllables: the patient knows them from the treatment
 */
export function englishGrade(text: string, exempt: ReadonlySet<string>): number {
  const words = wordsOf(text);
  const syllables = words.map((word) => (exempt.has(word.toLowerCase()) ? 1 : Math.max(1, syllable(word))));
  return fleschKincaid({
    sentence: sentencesOf(text).length,
    word: words.length,
    syllable: syllables.reduce((sum, count) => sum + count, 0),
  });
}

/**
 * Ease of reading in Spanish: 206.835 − 62.3 syllables per word − words per sentence (Szigriszt Pazos 1993). On the
 * INFLESZ scale (Barrio-Cantalejo et al. 2008, An Sist Sanit Navar 31:135) 55 to 65 is what people read every day, 65
 * to 80 is primary school. Formula and scale from memory.
 */
export function spanishEase(text: string): number {
  const words = wordsOf(text);
  const syllables = words.reduce((sum, word) => sum + spanishSyllables(word), 0);
  return 206.835 - (62.3 * syllables) / words.length - words.length / sentencesOf(text).length;
}

/** Syllables of a Spanish word: each strong or stressed weak vowel is a nucleus; weak vowels join their neighbours. */
export function spanishSyllables(word: string): number {
  const letters = word
    .toLowerCase()
    .replaceAll(/qu(?=[eéií])/g, 'q')
    .replaceAll(/gu(?=[eéií])/g, 'g')
    .replaceAll(/y$/g, 'i')
    .replaceAll('y', 'l');
  const nuclei = letters.match(/[iuü]*[aeoáéóíú][iuü]*|[iuü]+/g) ?? [];
  return Math.max(1, nuclei.length);
}
