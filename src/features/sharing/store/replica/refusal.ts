import { Problem } from '#core/problem';
import { z } from '#documents/schema/zod';
import { longestText } from '#documents/session/sessionDocument';

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
  'library-full',
  'library-damaged',
  'waits',
  'gone-there',
] as const;
export type RefusalReason = (typeof refusalReasons)[number];

/** A record whose pseudonym is used here for somebody else, as far as is known. */
export const namesakeSchema = z.strictObject({
  pseudonym: z.string().min(1).max(longestText.patient),
  patientId: z.uuid().describe('Id of the record at the sender.'),
  by: z.string().max(longestText.who).describe('Initials of who made that version.'),
});
export type Namesake = z.infer<typeof namesakeSchema>;

/** What each comes to: what it is, and what to do. */
export const refusalWords: Record<RefusalReason, { what: string; then: string }> = {
  garbage: {
    what: 'No document of this program',
    then: 'Ask who runs the server who else writes to this database.',
  },
  'other-people': {
    what: 'Sealed for other people',
    then: 'If a colleague has just added your key, it is sent again for you. Otherwise ask whether this is your practice’s database.',
  },
  'no-member': {
    what: 'From somebody whose key is not in your list of colleagues',
    then: 'Add the colleague, or ask who writes to this database.',
  },
  forged: {
    what: 'Changed on the way, or not from the colleague that it names',
    then: 'Nothing of it was used.',
  },
  'other-place': { what: 'Copied to another place on the server', then: 'Nothing of it was used.' },
  invalid: {
    what: 'Not readable by this program',
    then: 'If a colleague has a newer version of the program, update this one.',
  },
  namesake: {
    what: 'Of a patient whose pseudonym is used here for somebody with no plan or session in common',
    then: 'Stop sharing and start it again to see which patient it is.',
  },
  'of-another': {
    what: 'With the id of something that is kept here of another patient',
    then: 'Nothing here was changed.',
  },
  'library-full': {
    what: 'A library that is more than one can hold, together with the one here',
    then: 'Nothing was changed on either side. Take entries out under “Library”, here or there, and it is tried again.',
  },
  'library-damaged': {
    what: 'A library, while the one on this device can’t be read',
    then: 'The one here was left as it is. Update the program, or restore a backup of everything.',
  },
  waits: { what: 'Waiting for the record or the session that it belongs to', then: 'It may still come.' },
  'gone-there': {
    what: 'Deleted on the server, by nobody of the practice',
    then: 'Nothing was deleted here, and it is sent again.',
  },
};

/** A sealed copy that is not taken in. */
export class Refusal extends Problem {
  constructor(
    readonly reason: RefusalReason,
    options?: ErrorOptions,
    readonly namesake: Namesake | null = null,
  ) {
    super('file', `${refusalWords[reason].what}. ${refusalWords[reason].then}`, options);
    this.name = 'Refusal';
  }
}
