import { logKinds, type LogEntry, type LogKind } from '../patient/logEntry';
import { z } from '../schema/zod';
import { ownConcept, ownExtension, patientReference, takenPart, type Resource } from './fhirCodes';
import { therapist } from './origin';
import { conceptOf, extensionOf } from './readingParts';

/**
 * Who did what, each entry with what its device signed. The signature is of the entry's own text (docs/backup-format.md)
 * and not of a resource, so it is no `signature` of FHIR.
 */
export function logResources(log: readonly LogEntry[]): Resource[] {
  return log.map(({ id, at, by, what, about, after, key, signature }, i) => ({
    resourceType: 'Provenance',
    id: `log-${i}`,
    extension: [
      text('log-id', id),
      text('log-about', about),
      ...after.map((one) => text('log-after', one)),
      ...(key === '' ? [] : [text('log-key', key)]),
      ...(signature === '' ? [] : [text('log-signature', signature)]),
    ],
    target: [patientReference],
    recorded: at,
    activity: ownConcept('log', what, kindWords[what]),
    agent: [{ type: takenPart('author'), who: therapist(by) }],
  }));
}

const text = (name: string, valueString: string) => ({ url: ownExtension(name), valueString });

const kindWords: Record<LogKind, string> = {
  decision: 'Decided on a proposal',
  limits: 'Changed limits',
  corrections: 'Corrected by hand',
  review: 'Marked a set as reviewed',
  'review-withdrawn': 'Took back that a set was reviewed, or that a session is settled',
  'concern-settled': 'Settled what was said of the body',
  'session-settled': 'Said that nothing is left to do in a session',
  given: 'Handed the record over',
  taken: 'Took the record over',
  'note-put-away': 'Put away what somebody else noted',
  'note-put-back': 'Showed again what somebody else noted',
};

/** What `logResources` writes. */
export const loggedSchema = z
  .looseObject({
    extension: z.array(z.looseObject({ url: z.string(), valueString: z.string() })),
    recorded: z.string(),
    activity: conceptOf('log', logKinds),
    agent: z.tuple([
      z.looseObject({ who: z.looseObject({ identifier: z.looseObject({ value: z.string() }).optional() }) }),
    ]),
  })
  .transform(({ extension, recorded, activity, agent: [{ who }] }): LogEntry => {
    const one = (name: string) => String(extensionOf(extension, name)?.value ?? '');
    return {
      id: one('log-id'),
      at: recorded,
      by: who.identifier?.value ?? '',
      what: activity,
      about: one('log-about'),
      after: extension
        .filter(({ url }) => url === ownExtension('log-after'))
        .map(({ valueString }) => valueString),
      key: one('log-key'),
      signature: one('log-signature'),
    };
  });
