import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';

/** As long as any plan or session that is kept, characters. */
const longestDocument = 1_000_000;
export const mostOtherVersions = 500;

/** Another version of a session or plan with the same id, which does not count; never changed afterwards. */
export const otherVersionSchema = z.strictObject({
  kind: z.enum(['visit', 'plan']),
  of: z.string().min(1).max(100).describe('Id of the session or plan.'),
  at: z.iso.datetime().describe('When both versions came together on one device.'),
  by: z.string().max(longestText.who).describe('Initials of who had it.'),
  text: z.string().max(longestDocument).describe('The document, as JSON.'),
});
export type OtherVersion = z.infer<typeof otherVersionSchema>;

/** With one more; the same array where that text is there already. */
export function withOtherVersion(kept: OtherVersion[], given: OtherVersion): OtherVersion[] {
  const isKnown = kept.some(
    ({ kind, of, text }) => kind === given.kind && of === given.of && text === given.text,
  );
  return isKnown ? kept : [...kept, given];
}
