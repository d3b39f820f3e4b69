import { plainName } from '../schema/plainName';
import { publicKeySchema } from '../schema/publicKeySchema';
import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';

/** More than any practice has. */
export const mostColleagues = 50;
const mostTakenOut = 500;

const initials = z.string().min(1).max(longestText.who);

/** A colleague's initials and public key. */
const colleagueSchema = z.strictObject({ initials, key: publicKeySchema });
export type Colleague = z.infer<typeof colleagueSchema>;

/** Bumped when a field is added, removed or changes its meaning. */
const peopleVersion = 1;

const peopleSchema = z.strictObject({
  format: z.literal('overfoot-people'),
  version: z.literal(peopleVersion),
  /** Own initials; empty where they were not given. */
  initials: z.string().max(longestText.who),
  colleagues: z.array(colleagueSchema).max(mostColleagues),
  /** Those who were taken out, the latest last: plans that were given before carry their keys. */
  takenOut: z.array(z.strictObject({ ...colleagueSchema.shape, at: z.iso.datetime() })).max(mostTakenOut),
});

/** The people of a practice, as one device keeps them. */
export type People = z.infer<typeof peopleSchema>;

export const nobody: People = {
  format: 'overfoot-people',
  version: peopleVersion,
  initials: '',
  colleagues: [],
  takenOut: [],
};

/**
 * The people that are kept.
 *
 * @param text  as it is kept; null where nobody is
 * @returns  null where it can't be read: nothing may then be written over it unasked
 */
export function readPeople(text: string | null): People | null {
  if (text === null || text === '') return nobody;
  try {
    return peopleSchema.parse(JSON.parse(text));
  } catch {
    return null;
  }
}

/** Initials as they are kept: without characters that are not seen, no longer than the bound. */
export function plainInitials(text: string): string {
  return plainName(text).slice(0, longestText.who);
}

/** With a colleague, whose earlier key, if there is one under the same initials, is taken out. */
export function withColleague(people: People, colleague: Colleague, at: string): People {
  const before = people.colleagues.find(({ initials }) => initials === colleague.initials);
  const { colleagues, takenOut } = before === undefined ? people : withoutColleague(people, before.key, at);
  return {
    ...people,
    colleagues: [...colleagues, colleague].sort((a, b) => a.initials.localeCompare(b.initials)),
    takenOut: takenOut.filter(({ key }) => key !== colleague.key),
  };
}

/** Without the colleague who has that key; it is remembered that they were taken out. */
export function withoutColleague(people: People, key: string, at: string): People {
  const gone = people.colleagues.find((one) => one.key === key);
  if (gone === undefined) return people;
  return {
    ...people,
    colleagues: people.colleagues.filter((one) => one !== gone),
    takenOut: [...people.takenOut, { ...gone, at }].slice(-mostTakenOut),
  };
}
