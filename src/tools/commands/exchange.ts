import { isProblem } from '#core/problem';
import { buildExchangeRecord } from '#documents/exchange/buildExchangeRecord';
import { buildFhirBundle } from '#documents/exchange/buildFhirBundle';
import { readFhirBundle } from '#documents/exchange/readFhirBundle';
import { readPatient } from '#documents/patient/readPatient';
import { parsePlan } from '#documents/plan/parsePlan';
import { parseRecording } from '#documents/recording/parseRecording';
import { isFields } from '#documents/schema/isFields';
import { parseSession } from '#documents/session/parseSession';
import { CommandProblem } from './tools/commandProblem';
import { readArguments } from './tools/readArguments';
import { readJson } from './tools/readJson';
import { readText } from './tools/readText';
import { runCommand } from './tools/runCommand';

const usage =
  'Usage: npm run -s exchange -- FILE.json ...   (the patient document, sessions, plans and recordings of one patient ' +
  'become a FHIR R4 bundle; a bundle that was made here is read back)';

/** A file, with the field that tells its kind. */
interface Given {
  path: string;
  format: unknown;
}

await runCommand(async () => {
  const paths = readArguments({}, usage).positionals;
  if (paths.length === 0) throw new CommandProblem(`The files are missing. ${usage}`);
  const given = paths.map((path): Given => {
    const data = readJson(path, 'a document');
    return { path, format: isFields(data) ? (data['format'] ?? data['resourceType']) : undefined };
  });
  const bundle = given.find(({ format }) => format === 'Bundle');
  if (bundle !== undefined && given.length > 1)
    throw new CommandProblem(`"${bundle.path}" is a bundle; give it by itself. ${usage}`);
  const printed =
    bundle === undefined
      ? buildFhirBundle(buildExchangeRecord(readDocuments(given), new Date().toISOString()))
      : orProblem(bundle.path, () => readFhirBundle(readJson(bundle.path, 'a bundle')));
  console.log(JSON.stringify(printed, null, 2));
});

function readDocuments(given: readonly Given[]) {
  const other = given.find(
    ({ format }) =>
      !['overfoot-patient', 'overfoot-visit', 'overfoot-plan', 'overfoot-session'].includes(String(format)),
  );
  if (other !== undefined)
    throw new CommandProblem(`"${other.path}" is no patient, session, plan or recording. ${usage}`);
  const all = <Document>(wanted: string, parse: (text: string) => Document) =>
    given
      .filter(({ format }) => format === wanted)
      .map(({ path }) => orProblem(path, () => parse(readText(path))));
  const plans = all('overfoot-plan', parsePlan);
  const sessions = all('overfoot-visit', parseSession);
  const [record, second] = all('overfoot-patient', (text) => readPatient(JSON.parse(text)));
  if (second !== undefined) throw new CommandProblem(`Two of the files are a patient. Give one. ${usage}`);
  const named = [
    ...(record === undefined ? [] : [record.pseudonym]),
    ...[...plans, ...sessions].map(({ patient }) => patient),
  ];
  const patients = [...new Set(named)];
  if (patients.length > 1) {
    const names = patients.map((name) => `"${name}"`).join(' and ');
    throw new CommandProblem(`The files are of ${names}. Give those of one patient.`);
  }
  const recordings = all('overfoot-session', parseRecording);
  const inSessions = new Set(sessions.flatMap(({ sets }) => sets.map(({ sessionId }) => sessionId)));
  const alone = recordings.find(({ id }) => !inSessions.has(id));
  if (alone !== undefined)
    throw new CommandProblem(`Recording ${alone.id} belongs to none of the sessions. Give its session too.`);
  return {
    ...{ patient: patients[0] ?? '', plans, sessions, recordings },
    ...(record === undefined ? {} : { record }),
  };
}

function orProblem<Value>(path: string, read: () => Value): Value {
  try {
    return read();
  } catch (error) {
    if (isProblem(error, 'file', 'plan', 'recording', 'session'))
      throw new CommandProblem(`"${path}": ${error.message}`);
    throw error;
  }
}
