import { describe, expect, it } from 'vitest';
import { english, type MessageKey } from '#words/messages/english';
import { spanish } from '#words/messages/spanish';
import { casesOf, format } from '../../../support/messageCases';
import { englishGrade, spanishEase, spanishSyllables } from '../../../support/readability';

/** Read at about 12 years. */
const highestGrade = 7;
/** What people read every day; the formula has no grade for an age. */
const leastEase = 55;
/** Formulas say nothing of less, words. */
const fewestWords = 8;

/** Terms of the body and of the treatment, which the patient hears from the therapist. */
const exempt = new Set([
  ...['ankle', 'kneecap', 'shoulder', 'shoulders', 'bladder', 'bowels'],
  ...['exercise', 'exercises', 'repetition', 'repetitions'],
  ...['physiotherapist', 'therapist', 'therapist’s', 'doctor', 'doctor’s', 'emergency'],
]);

/**
 * For whoever helps with a device or a file, with names of formats and settings that have no simpler word.
 */
const technical: readonly MessageKey[] = ['video-trouble.format'];

/** Every message as it is read, one of its cases; placeholders count as one short word. */
const read = (all: Readonly<Record<MessageKey, string>>, locale: string) =>
  (Object.keys(english) as MessageKey[])
    .filter((key) => !technical.includes(key))
    .map((key) => ({
      key,
      text: format(all[key], locale, casesOf(all[key])[0]!).replaceAll(/⟨.*?⟩/g, 'it'),
    }))
    .filter(({ text }) => text.split(/\s+/).length >= fewestWords);

describe('the English catalogue', () => {
  it('is read at about 12 years, message by message', () => {
    const texts = read(english, 'en');
    expect(texts.length).toBeGreaterThan(250);
    const hard = texts
      .map(({ key, text }) => ({ key, grade: englishGrade(text, exempt) }))
      .filter(({ grade }) => grade > highestGrade);
    expect(hard).toEqual([]);
  });

  it('would notice a hard sentence', () => {
    const hard =
      'Insufficient illumination may compromise the determination of the articulation’s instantaneous configuration.';
    expect(englishGrade(hard, exempt)).toBeGreaterThan(highestGrade);
  });
});

describe('the Spanish catalogue', () => {
  it('is no harder than what people read every day, message by message', () => {
    const texts = read(spanish, 'es');
    expect(texts.length).toBeGreaterThan(250);
    const hard = texts
      .map(({ key, text }) => ({ key, ease: Math.round(spanishEase(text)), text }))
      .filter(({ ease }) => ease < leastEase);
    expect(hard).toEqual([]);
  });

  // Division by the rules of the Real Academia Española, Ortografía, by hand.
  it.each([
    ['pie', 1],
    ['rodilla', 3],
    ['izquierda', 3],
    ['energía', 4],
    ['aeropuerto', 5],
    ['siguiente', 3],
    ['cuidado', 3],
    ['terapeuta', 4],
    ['y', 1],
    ['muy', 1],
    ['leído', 3],
  ])('%s has %i syllables', (word, count) => {
    expect(spanishSyllables(word)).toBe(count);
  });
});
