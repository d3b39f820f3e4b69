import type { ExchangeHand, ExchangeRecord, ExchangeResult } from './exchangeRecord';
import { ownConcept, ownSystem, patientReference, reference, takenPart, type Resource } from './fhirCodes';

const own = [{ text: 'Not a certified medical device.' }];

/** The program itself, whatever it measured with. */
export const program: Resource = {
  resourceType: 'Device',
  id: 'program',
  deviceName: [{ name: 'Overfoot', type: 'model-name' }],
  note: own,
};

/** What measured: the program with a measuring version and a pose network. */
export interface Instrument {
  id: string;
  measuringVersion: number;
  network: string;
}

/** Every instrument that a record's sets were measured with. */
export function instrumentsOf({ sessions }: Pick<ExchangeRecord, 'sessions'>): Instrument[] {
  const found: Instrument[] = [];
  for (const { sets } of sessions)
    for (const { result } of sets)
      if (result !== null && instrumentOf(found, result) === undefined) {
        const { measuringVersion, network } = result;
        found.push({ id: `measuring-${found.length + 1}`, measuringVersion, network });
      }
  return found;
}

export function instrumentOf(
  instruments: readonly Instrument[],
  { measuringVersion, network }: Pick<ExchangeResult, 'measuringVersion' | 'network'>,
): Instrument | undefined {
  return instruments.find((one) => one.measuringVersion === measuringVersion && one.network === network);
}

export function instrumentDevice({ id, measuringVersion, network }: Instrument): Resource {
  return {
    resourceType: 'Device',
    id,
    deviceName: [{ name: 'Overfoot', type: 'model-name' }],
    version: [
      { type: { text: 'measuring version' }, value: String(measuringVersion) },
      { type: { text: 'pose network' }, value: network },
    ],
    note: own,
    parent: reference('Device', program.id),
  };
}

/** Where a set's figures come from: the recording, and each thing that somebody did to it by hand. */
export function provenanceOf(
  setId: string,
  result: ExchangeResult,
  { id: deviceId }: Instrument,
): Resource[] {
  const target = [reference('Observation', setId)];
  return [
    {
      resourceType: 'Provenance',
      id: `${setId}-recorded`,
      target,
      recorded: result.recordedAt,
      activity: ownConcept('activity', 'recorded', 'The set was filmed and measured'),
      agent: [
        { type: takenPart('performer'), who: patientReference },
        { type: takenPart('assembler'), who: reference('Device', deviceId) },
      ],
    },
    ...result.hands.map((hand, i) => ({
      resourceType: 'Provenance',
      id: `${setId}-hand-${i}`,
      target,
      recorded: hand.at,
      activity: ownConcept('activity', hand.what, activityWords[hand.what]),
      ...(hand.said === '' ? {} : { reason: [{ text: hand.said }] }),
      agent: [{ type: takenPart(hand.what === 'reviewed' ? 'verifier' : 'author'), who: therapist(hand.by) }],
    })),
  ];
}

const activityWords: Record<ExchangeHand['what'], string> = {
  corrected: 'Corrected by hand',
  limits: 'Limits were set',
  reviewed: 'Reviewed',
};

/** Named by initials or a role, as the practice wrote them. */
export function therapist(by: string) {
  if (by === '') return { type: 'Practitioner', display: 'not named' };
  return { type: 'Practitioner', identifier: { system: ownSystem('initials'), value: by } };
}
