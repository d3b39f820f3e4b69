import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Browser } from '@playwright/test';
import { newPatient } from '#documents/patient/newPatient';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { contentHash } from '#documents/practice/contentHash';
import { notAsked } from '#documents/session/notAsked';
import { sessionVersion, type SessionDocument } from '#documents/session/sessionDocument';
import { ensureBuilt } from './ensureBuilt';
import { browserSwitches, findBrowser } from './findBrowser';
import { openPractice, type PracticeMember } from './practice/practiceMember';
import { startReplicaServer, type ReplicaServer } from './practice/startReplicaServer';
import { serveBuild } from './serveBuild';

/** How a practice shares through a server on this machine. */
export interface PracticeFigures {
  /** Sessions that the first device has before it shares. */
  visits: number;
  /** Of all devices together, once they are up to date. */
  lost: number;
  twice: number;
  /** Words, numbers and ids of the documents that are found in what the server has on its disk. */
  readableFound: number;
  /** From starting to share on all devices to the last session on the last one. */
  secondsToBringUp: number;
  /** What lies on the server for one, sealed, as it goes over the line; with its share of the patients' records. */
  bytesAVisit: number;
  /** From an edit of one record on every device at once to the same record on all of them. */
  secondsToConverge: number;
}

const visits = 500;
const pseudonyms = [
  'Invented Heron 1',
  'Invented Otter 2',
  'Invented Plover 3',
  'Invented Marten 4',
  'Invented Finch 5',
];
const longMs = 600_000;

/** With two devices, and with five. */
export async function benchPractice(): Promise<PracticeFigures & { withFive: PracticeFigures }> {
  ensureBuilt();
  const pages = await serveBuild();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: [...browserSwitches] });
  try {
    const two = await benchDevices(browser, pages.url, ['AB', 'KN']);
    return { ...two, withFive: await benchDevices(browser, pages.url, ['AB', 'KN', 'PQ', 'RS', 'TU']) };
  } finally {
    await browser.close();
    await pages.close();
  }
}

async function benchDevices(
  browser: Browser,
  url: string,
  names: readonly string[],
): Promise<PracticeFigures> {
  const server = await startReplicaServer();
  try {
    const members = await openPractice(browser, url, new URL(server.address).origin, names);
    for (const { context } of members) context.setDefaultTimeout(longMs);
    const patients = pseudonyms.map((name) =>
      newPatient(name, crypto.randomUUID(), '2026-02-01T04:05:06.000Z'),
    );
    const sessions = Array.from({ length: visits }, (_, index) => inventedVisit(index));
    await members[0]!.keep(patients, sessions);
    const ids = new Set(sessions.map(({ id }) => id));
    let fromMs = Date.now();
    for (const member of members) await member.start(server.address);
    const all = async (isSo: (member: PracticeMember) => Promise<boolean>) => {
      for (const member of members)
        while (!(await isSo(member))) await new Promise((resume) => setTimeout(resume, 100));
    };
    await all(async (member) => (await member.kept()).sessionIds.length >= visits);
    const secondsToBringUp = (Date.now() - fromMs) / 1000;

    const [patient] = patients;
    fromMs = Date.now();
    await Promise.all(
      members.map((member, index) =>
        member.note(patient!.id, {
          goals: `Goal of ${member.initials}`,
          changedAt: `2026-03-0${index + 1}T04:05:06.000Z`,
        }),
      ),
    );
    const latest = `Goal of ${names.at(-1)!}`;
    await all(async (member) => {
      const [own, first] = await Promise.all([member, members[0]!].map((one) => recordOf(one, patient!.id)));
      return own!.goals === latest && contentHash('patient', own!) === contentHash('patient', first!);
    });
    const secondsToConverge = (Date.now() - fromMs) / 1000;

    let [lost, twice] = [0, 0];
    for (const member of members) {
      const { sessionIds } = await member.kept();
      const kept = new Set(sessionIds);
      lost += [...ids].filter((id) => !kept.has(id)).length;
      twice += sessionIds.length - [...kept].filter((id) => ids.has(id)).length;
    }
    const sizes = await sealedSizes(server);
    twice += Math.max(0, sizes.length - visits - patients.length);
    const readableFound = findReadable(server, sessions);
    for (const { context } of members) await context.close();
    const bytesAVisit = Math.round(sizes.reduce((sum, one) => sum + one, 0) / visits);
    return { visits, lost, twice, readableFound, secondsToBringUp, bytesAVisit, secondsToConverge };
  } finally {
    await server.stop();
  }
}

async function recordOf(member: PracticeMember, id: string): Promise<PatientDocument> {
  return (await member.kept()).patients.find((one) => one.id === id)!;
}

/** A session of one of the patients, with a hold and a remark that can be searched for. */
function inventedVisit(index: number): SessionDocument {
  const startedAt = new Date(Date.parse('2026-02-02T08:00:00.000Z') + index * 3_600_000).toISOString();
  return {
    format: 'overfoot-visit',
    version: sessionVersion,
    ...notAsked,
    id: crypto.randomUUID(),
    startedAt,
    endedAt: startedAt,
    patient: pseudonyms[index % pseudonyms.length]!,
    planId: crypto.randomUUID(),
    painBefore: index % 5,
    painAfter: index % 7,
    effort: index % 10,
    remark: `An invented remark on visit ${index}`,
    sets: ([1, 2, 3] as const).map((number) => ({
      sessionId: null,
      item: 0,
      task: 'quad-press-hold',
      side: 'left',
      number,
      prescribedRepetitions: null,
      painDuring: index % 4,
      cutShort: null,
      heldMs: 30_000 + index,
      conditions: null,
    })),
  };
}

/** Of each document on the server, bytes. */
async function sealedSizes({ address }: ReplicaServer): Promise<number[]> {
  const { rows } = (await (await fetch(`${address}/_all_docs?include_docs=true`)).json()) as {
    rows: { doc: object }[];
  };
  return rows.map(({ doc }) => JSON.stringify(doc).length);
}

/** How many of the words, times and ids are on the server's disk, as they are or in base64. */
function findReadable({ folder }: ReplicaServer, sessions: readonly SessionDocument[]): number {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
  const bytes = Buffer.concat(files.map(({ parentPath, name }) => readFileSync(join(parentPath, name))));
  const traces = [
    ...pseudonyms,
    'overfoot-visit',
    'overfoot-shared',
    'invented remark',
    'painAfter',
    ...sessions.slice(0, 20).flatMap(({ id, planId, startedAt, remark }) => [id, planId!, startedAt, remark]),
  ];
  const forms = traces.flatMap((trace) => [trace, Buffer.from(trace).toString('base64').slice(0, -4)]);
  return forms.filter((form) => bytes.includes(form)).length;
}
