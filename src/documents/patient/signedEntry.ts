import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';

/** When, and by whom. */
export const signed = {
  at: z.iso.datetime(),
  by: z.string().min(1).max(longestText.who).describe('Initials.'),
};

/** An entry that is never deleted: a mistake is taken out, and stays. */
export const keptEntry = {
  id: z.uuid(),
  ...signed,
  withdrawn: z
    .strictObject(signed)
    .nullable()
    .describe('Where it was a mistake: who said so, and when. It stays in the record.'),
};
