import { clinicianFlags } from '#core/safety/clinicianFlags';
import type { Override, RedFlagsRecord } from '#documents/patient/caseEntries';
import { dateInWords, dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';

/** What was asked about warning signs at a visit, and what applied; no diagnosis. */
export function redFlagsSentences({ on, by, asked, applied }: RedFlagsRecord): string[] {
  const phrases = (ids: readonly string[]) =>
    clinicianFlags.filter(({ id }) => ids.includes(id)).map(({ asks }) => asks);
  const notAsked = clinicianFlags.filter(({ id }) => !asked.includes(id)).map(({ asks }) => asks);
  const answer = applied.length === 0 ? 'none applied' : `applied: ${phrases(applied).join('; ')}`;
  return [
    `${dateInWords(on)}, ${by}: ${asked.length} of ${clinicianFlags.length} asked about, ${answer}.`,
    ...(notAsked.length === 0 ? [] : [`Not asked about: ${notAsked.join('; ')}.`]),
  ];
}

/** Where each sign that is asked about comes from. */
export function flagSources(): string[] {
  return clinicianFlags.map(({ asks, source }) => `${asks}: ${source ?? 'common practice, no source'}`);
}

/** 'AB, Fri 3 Apr 2026: signed over “…”, because …'. */
export function overrideSentence({ at, by, refusal, why, task }: Override): string {
  return `${by}, ${dayWords(at)}, ${exerciseName(task)}: signed over “${refusal}” Why: ${why}`;
}

/** An answer to one sign at a visit. */
export type FlagAnswer = 'not-asked' | 'no' | 'applies';

/** What a form of answers comes to; null where nothing was asked. */
export function flagsOf(
  answers: Readonly<Record<string, FlagAnswer>>,
): Pick<RedFlagsRecord, 'asked' | 'applied'> | null {
  const ids = clinicianFlags.map(({ id }) => id);
  const asked = ids.filter((id) => (answers[id] ?? 'not-asked') !== 'not-asked');
  return asked.length === 0 ? null : { asked, applied: asked.filter((id) => answers[id] === 'applies') };
}
