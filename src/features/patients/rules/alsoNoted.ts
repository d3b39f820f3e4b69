import type { CheckedLog } from '#documents/patient/checkedLog';
import type { AlsoNoted } from '#documents/patient/patientDocument';
import { dayWords } from '#words/dateWords';

type Name = Pick<AlsoNoted, 'at' | 'by'>;

/** What signed entries call a note: when it was made, and by whom. */
export function noteName({ at, by }: Name): string {
  return `${at} ${by}`;
}

/** 'KN noted on Sun 5 Apr 2026', from a name as noteName() gives it. */
export function noteNameWords(name: string): string {
  const [at = '', ...by] = name.split(' ');
  return Number.isNaN(Date.parse(at)) ? 'somebody noted' : `${by.join(' ')} noted on ${dayWords(at)}`;
}

/** Whether the latest entry about it, of those that are as they were signed, puts it away. */
export function isPutAway(note: Name, { entries }: CheckedLog): boolean {
  const last = entries.findLast(
    ({ entry, standing }) =>
      standing !== 'wrong' &&
      (entry.what === 'note-put-away' || entry.what === 'note-put-back') &&
      entry.about === noteName(note),
  );
  return last?.entry.what === 'note-put-away';
}
