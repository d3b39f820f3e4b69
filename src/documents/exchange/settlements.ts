import { z } from '../schema/zod';
import type { ExchangeSession, ExchangeSettlement } from './exchangeRecord';
import { ownConcept, reference, takenPart, type Resource } from './fhirCodes';
import { therapist } from './origin';
import { conceptOf, idOf } from './readingParts';

/**
 * Who says that what was said in a session is settled. A therapist is named by initials, a professional in the patient's
 * own words.
 */
export function settlementsOf({ id, settled }: ExchangeSession): Resource[] {
  return settled.map(({ by, who, at }, i) => ({
    resourceType: 'Provenance',
    id: `${id}-settled-${i}`,
    target: [reference('Procedure', id)],
    recorded: at,
    activity: ownConcept('activity', 'settled', 'What was said in the session is settled'),
    agent: [
      {
        type: takenPart('verifier'),
        who: by === 'therapist' ? therapist(who) : { type: 'Practitioner', display: who },
      },
    ],
  }));
}

/** When a therapist signed first that a session is settled; null where none did. */
export function signedAsSettled({ settled }: ExchangeSession): string | null {
  return settled.find(({ by }) => by === 'therapist')?.at ?? null;
}

/** What `settlementsOf` writes, with the session that it is of. */
export const settledSchema = z
  .looseObject({
    target: z.tuple([idOf('Procedure')]),
    recorded: z.string(),
    activity: conceptOf('activity', ['settled']),
    agent: z.tuple([
      z.looseObject({
        who: z.union([
          z
            .looseObject({ identifier: z.looseObject({ value: z.string() }) })
            .transform(({ identifier }) => ({ by: 'therapist' as const, who: identifier.value })),
          z
            .looseObject({ display: z.string() })
            .transform(({ display }) => ({ by: 'professional' as const, who: display })),
        ]),
      }),
    ]),
  })
  .transform(({ target: [sessionId], recorded, agent: [{ who }] }) => ({
    sessionId,
    settlement: { ...who, at: recorded } satisfies ExchangeSettlement,
  }));
