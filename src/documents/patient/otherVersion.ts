import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';

/** As long as any plan or session that is kept, characters. */
export const longestDocument = 1_000_000;
export const mostOtherVersions = 500;
/** Of all of them together, characters: with more, the record could not be sent to a practice's server. */
const longestTogether = 10_000_000;

/** Another version of a session, a plan or the review of a recording with the same id, which does not count. */
export const otherVersionSchema = z.strictObject({
  kind: z.enum(['visit', 'plan', 'review']),
  of: z.string().min(1).max(100).describe('Id of the session, plan or recording.'),
  at: z.iso.datetime().describe('When both versions came together first on one device.'),
  by: z.string().max(longestText.who).describe('Initials of who had it.'),
  text: z
    .string()
    .max(longestDocument)
    .describe(
      'The document, as JSON; of a review its corrections by hand and cues, and of which set they are.',
    ),
});
export type OtherVersion = z.infer<typeof otherVersionSchema>;

/**
 * With one more; the same array where that text is there already. The order in which they are added does not matter: of
 * one that was found on two devices, the first time counts; beyond what fits, the oldest are left out.
 */
export function withOtherVersion(kept: OtherVersion[], given: OtherVersion): OtherVersion[] {
  const known = kept.find(
    ({ kind, of, text }) => kind === given.kind && of === given.of && text === given.text,
  );
  if (known !== undefined && inOrder(known, given) <= 0) return kept;
  const all = [...kept.filter((one) => one !== known), given].sort(inOrder);
  let room = longestTogether;
  const tooOld = all.findLastIndex(({ text }) => (room -= text.length) < 0);
  const fitting = all.slice(tooOld + 1).slice(-mostOtherVersions);
  return fitting.length === kept.length && !fitting.includes(given) ? kept : fitting;
}

function inOrder(a: OtherVersion, b: OtherVersion): number {
  const [keyA, keyB] = [a, b].map(({ at, by, kind, of, text }) => [at, by, kind, of, text].join('\n'));
  return Date.parse(a.at) - Date.parse(b.at) || (keyA! < keyB! ? -1 : Number(keyA! > keyB!));
}
