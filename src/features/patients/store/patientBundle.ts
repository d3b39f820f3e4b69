import type { Repository } from '#device/storage/repository';
import { buildExchangeRecord, type HandedRecording } from '#documents/exchange/buildExchangeRecord';
import { buildFhirBundle } from '#documents/exchange/buildFhirBundle';
import { deriveRecording } from '#documents/recording/buildRecording';
import type { ReportCase } from '../rules/report/reportFacts';
import { therapistReport } from '../rules/report/therapistReport';
import { eachMeasuredSet } from './eachMeasuredSet';

/**
 * A patient's plans, sessions, sets, tests and questionnaires with the therapist's report, as a bundle of HL7 FHIR R4. Each set is measured
 * from its joints like in the table of repetitions, so that both have the same figures.
 *
 * @param onProgress  called before each set; what it returns is waited for
 */
export async function patientBundle(
  kept: Pick<Repository, 'recordings'>,
  reported: ReportCase,
  onProgress: (done: number, total: number) => Promise<void> = () => Promise.resolve(),
): Promise<string> {
  const { patient, plans, sessions, nowMs } = reported;
  const recordings: HandedRecording[] = [];
  await eachMeasuredSet(kept, sessions, onProgress, ({ recording, measured: { measurement, excluded } }) => {
    const { id, createdAt, note, limits, corrections, review, observed } = recording;
    const { measuringVersion, repetitions } = deriveRecording(measurement, limits, excluded);
    recordings.push({
      ...{ id, createdAt, note, limits, corrections, review },
      setup: measurement.setup,
      observed: { model: observed.model },
      derived: { measuringVersion, repetitions },
    });
  });
  const record = buildExchangeRecord(
    {
      patient: patient.pseudonym,
      plans,
      sessions: sessions
        .filter(({ kind }) => kind === 'visit')
        .map((session) => ({
          ...session,
          planId: session.plan?.id ?? null,
          sets: session.sets.map(({ line, asked }) => ({
            ...line,
            conditions: line.conditions ?? asked ?? null,
          })),
        })),
      recordings,
      record: patient,
      report: therapistReport(reported),
    },
    new Date(nowMs).toISOString(),
  );
  return `${JSON.stringify(buildFhirBundle(record), null, 2)}\n`;
}
