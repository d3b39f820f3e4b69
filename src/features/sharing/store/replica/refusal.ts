import { Problem } from '#core/problem';

/** Why a sealed copy was not taken in. */
export const refusalReasons = [
  'garbage',
  'other-people',
  'no-member',
  'forged',
  'other-place',
  'invalid',
  'namesake',
  'of-another',
  'waits',
  'gone-there',
] as const;
export type RefusalReason = (typeof refusalReasons)[number];

/** What each comes to: what it is, and what to do. */
export const refusalWords: Record<RefusalReason, string> = {
  garbage: 'not documents of this program. Ask who runs the server who else writes to this database.',
  'other-people':
    'sealed for other people. If a colleague has just added your key, they are sent again for you; otherwise ask whether this is your practice’s database.',
  'no-member':
    'from somebody whose key is not in your list of colleagues. Add the colleague, or ask who writes to this database.',
  forged: 'changed on the way, or not from the colleague that they name. Nothing of them was used.',
  'other-place': 'copied to another place on the server. Nothing of them was used.',
  invalid: 'not readable by this program. If a colleague has a newer version, update this one.',
  namesake:
    'of a patient whose pseudonym is used here for somebody with no plan or session in common. If they are one person, hand the record over by file; if not, one of you needs another pseudonym.',
  'of-another': 'with the id of something that is kept here of another patient. Nothing here was changed.',
  waits: 'waiting for the record or the session that they belong to.',
  'gone-there': 'deleted on the server by nobody of the practice. Nothing was deleted here.',
};

/** A sealed copy that is not taken in. */
export class Refusal extends Problem {
  constructor(
    readonly reason: RefusalReason,
    options?: ErrorOptions,
  ) {
    super('file', `A shared document was refused: ${refusalWords[reason]}`, options);
    this.name = 'Refusal';
  }
}
