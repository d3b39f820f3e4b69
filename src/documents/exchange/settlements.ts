import type { Reopening } from '../patient/reopeningsOf';
import { z } from '../schema/zod';
import type { ExchangeSession, ExchangeSettlement } from './exchangeRecord';
import { ownConcept, reference, takenPart, type Resource } from './fhirCodes';
import { therapist } from './origin';
import { conceptOf, idOf } from './readingParts';

/**
 * Who says that what was said in a session is settled, and who last opened it again. A therapist is named by initials, a
 * professional in the patient's own words.
 */
export function settlementsOf({ id, settled, reopened }: ExchangeSession): Resource[] {
  const again = reopened === null ? [] : [reopeningOf(id, reopened)];
  return [
    ...settled.map(({ by, who, at }, i) => ({
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
    })),
    ...again,
  ];
}

function reopeningOf(id: string, { by, at }: Reopening): Resource {
  return {
    resourceType: 'Provenance',
    id: `${id}-reopened`,
    target: [reference('Procedure', id)],
    recorded: at,
    activity: ownConcept('activity', 'reopened', 'What was settled in the session was opened again'),
    agent: [{ type: takenPart('verifier'), who: therapist(by) }],
  };
}

/** When a therapist signed first that a session is settled, since it was last opened again; null where none did. */
export function signedAsSettled({ settled, reopened }: ExchangeSession): string | null {
  const since = reopened === null ? -Infinity : Date.parse(reopened.at);
  return settled.find(({ by, at }) => by === 'therapist' && Date.parse(at) > since)?.at ?? null;
}

/** That a session was opened again, as `settlementsOf` writes it. */
export const reopenedSchema = z
  .looseObject({
    target: z.tuple([idOf('Procedure')]),
    recorded: z.string(),
    activity: conceptOf('activity', ['reopened']),
    agent: z.tuple([
      z.looseObject({ who: z.looseObject({ identifier: z.looseObject({ value: z.string() }).optional() }) }),
    ]),
  })
  .transform(({ target: [sessionId], recorded, agent: [{ who }] }) => ({
    sessionId,
    reopened: { by: who.identifier?.value ?? '', at: recorded },
  }));

/** That a session is settled, as `settlementsOf` writes it. */
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
