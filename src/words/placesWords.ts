import { locale, message } from './messages/message';

/** Repetitions by their places, from 1 on: 'the third repetition', 'the third and the sixth repetition'. */
export function placesWords(places: readonly number[]): string {
  const list = new Intl.ListFormat(locale(), { type: 'conjunction' });
  const named = list.format(places.map((place) => message('which.place', { place })));
  return message('which.repetition', { places: named });
}
