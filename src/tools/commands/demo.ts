import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { usualSureness } from '#core/chance/grade';
import { createRepository } from '#device/storage/createRepository';
import { createMarks } from '#device/storage/marks';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import type { Repository } from '#device/storage/repository';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { parsePlan } from '#documents/plan/parsePlan';
import { parseRecording } from '#documents/recording/parseRecording';
import { errorBetweenDays } from '#features/patients/rules/practiceRepeats';
import { patientReport } from '#features/patients/rules/report/patientReport';
import { reportText } from '#features/patients/rules/report/reportLine';
import { therapistReport } from '#features/patients/rules/report/therapistReport';
import { createPatientIndex } from '#features/patients/store/createPatientIndex';
import { demoSeed, keepDemo } from '#features/patients/store/keepDemo';
import { patientBundle } from '#features/patients/store/patientBundle';
import { patientRepetitions, patientSessions } from '#features/patients/store/patientTables';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { saidIn } from '#words/messages/message';
import { spanish } from '#words/messages/spanish';
import { CommandProblem } from './tools/commandProblem';
import { projectRoot } from './tools/projectRoot';
import { readArguments } from './tools/readArguments';
import { runCommand } from './tools/runCommand';

const usage =
  'Usage: npm run -s demo -- FOLDER [--day 2026-06-01]   (writes the reports, tables and FHIR bundles of the demo ' +
  'clinic, whose patients are invented, into FOLDER; its last session is on the day before)';
const usualDay = '2026-06-01';

await runCommand(async () => {
  const { positionals, values } = readArguments({ day: { type: 'string', default: usualDay } }, usage);
  const [folder, ...more] = positionals;
  if (folder === undefined) throw new CommandProblem(`The folder is missing. ${usage}`);
  if (more.length > 0) throw new CommandProblem(`"${more[0]}" is too much. ${usage}`);
  const nowMs = Date.parse(`${values.day}T10:00:00.000Z`);
  if (Number.isNaN(nowMs)) throw new CommandProblem(`"${values.day}" is not a day. ${usage}`);
  if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() === false)
    throw new CommandProblem(`"${folder}" is not a folder. Give the name of a folder; it is made if needed.`);
  mkdirSync(folder, { recursive: true });

  const kept = createRepository({
    records: createMemoryRecords(),
    videos: createMemoryVideos(),
    lasting: { records: false, videos: false },
    marks: createMarks(undefined),
  });
  const example = parseRecording(readFileSync(join(projectRoot, 'fixtures/example.session.json'), 'utf8'));
  const index = createPatientIndex({
    openRepository: () => Promise.resolve({ repository: kept, problem: null }),
    sureness: () => usualSureness,
    newId: () => crypto.randomUUID(),
    now: () => new Date(nowMs),
  });
  const sessionsOf = (pseudonym: string) => index.sessionsOf(pseudonym);
  await keepDemo(kept, { example, nowMs, seed: demoSeed }, sessionsOf, (done, total) => {
    if (process.stderr.isTTY) process.stderr.write(`\r\x1b[K${done} of ${total} sessions`);
    return Promise.resolve();
  });
  if (process.stderr.isTTY) process.stderr.write('\r\x1b[K');
  const { found } = await kept.patients.list();
  for (const patient of found)
    await writePatient(folder, kept, patient, await sessionsOf(patient.pseudonym), nowMs);
  console.log(`${found.length} invented patients: reports, tables and bundles are in ${folder}`);
});

async function writePatient(
  folder: string,
  kept: Repository,
  { id, pseudonym }: PatientDocument,
  sessions: readonly ListedSession[],
  nowMs: number,
): Promise<void> {
  const patient = (await kept.patients.find(id))!;
  const plans = await Promise.all(
    patient.plans.map(async (plan) => parsePlan((await kept.plans.find(plan.id))!)),
  );
  const reported = { patient, plans: plans.reverse(), sessions, nowMs, error: errorBetweenDays(null) };
  const name = pseudonym.toLowerCase().replaceAll(' ', '-');
  const write = (ending: string, text: string) => writeFileSync(join(folder, `${name}.${ending}`), text);
  write('report.txt', reportText(therapistReport(reported)));
  write('patient.en.txt', reportText(patientReport(reported)));
  write(
    'patient.es.txt',
    saidIn('es', spanish, () => reportText(patientReport(reported))),
  );
  write('repetitions.csv', await patientRepetitions(kept, sessions, usualSureness));
  write('visits.csv', patientSessions(sessions, patient.note));
  write('fhir.json', await patientBundle(kept, reported));
}
