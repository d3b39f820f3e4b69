import { readFileSync } from 'node:fs';
import { mapSavedCurves } from '#core/measures/measures';
import { isProblem, type ProblemKind } from '#core/problem';
import { backupManifestSchema, readBackupManifest } from '#documents/backup/backupManifest';
import { manifestSchema, readManifest } from '#documents/parcel/parcelManifest';
import { parsePlan } from '#documents/plan/parsePlan';
import { parseRecording } from '#documents/recording/parseRecording';
import { parseSession } from '#documents/session/parseSession';
import { documentJsonSchema, jsonSchemaOf } from './documentJsonSchema';
import type { FuzzedParser } from './fuzzParser';
import { projectRoot } from './projectRoot';

const fixture = (name: string) =>
  JSON.parse(readFileSync(`${projectRoot}fixtures/${name}`, 'utf8')) as object;

/** The example's recording with three frames and one repetition, so that thousands can be tried. */
function shortRecording(): object {
  const { observed, derived, ...rest } = parseRecording(JSON.stringify(fixture('example.session.json')));
  const frames = 3;
  const cut = (values: readonly number[], each = 33) => values.slice(0, frames * each);
  const curve = { values: [1, 2, 3], missing: [] };
  /** The same with every extreme at the first sample. */
  const atFirst = <Value>(value: Value): Value =>
    JSON.parse(JSON.stringify(value), (key, one: unknown) => (key === 'sample' ? 1 : one)) as Value;
  const [repetition] = derived.repetitions.map((one) => ({
    ...atFirst(one),
    loadedFrom: 0,
    loadedTo: 2,
  }));
  return {
    ...rest,
    observed: {
      ...observed,
      timesMs: cut(observed.timesMs, 1),
      xPx: cut(observed.xPx),
      yPx: cut(observed.yPx),
      score: cut(observed.score),
    },
    derived: { ...derived, curves: mapSavedCurves(() => curve), repetitions: [repetition] },
  };
}

const session = {
  format: 'overfoot-visit',
  version: 1,
  id: '3f4a6d0e-93ff-4a8e-8f8d-5a6c1b2e7d10',
  startedAt: '2026-04-05T06:07:08.000Z',
  endedAt: '2026-04-05T06:21:08.000Z',
  patient: 'invented-heron',
  planId: null,
  painBefore: 0,
  painAfter: 2,
  effort: 6,
  remark: 'An invented visit.',
  sets: [
    {
      sessionId: '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11',
      item: 0,
      task: 'split-stance-sit-to-stand',
      side: 'right',
      number: 1,
      prescribedRepetitions: 8,
      painDuring: 3,
      cutShort: 'The doorbell rang.',
      heldMs: null,
    },
  ],
};

const file = { bytes: 120, unpackedBytes: 400, sha256: 'a0'.repeat(32) };
const film = { bytes: 900, sha256: 'b1'.repeat(32), type: 'video/webm' };
const { sessionId } = session.sets[0]!;
/** What follows the first lines below, bytes. */
const followingBytes = 1020;

const parcelHead = {
  format: 'overfoot-parcel',
  version: 1,
  visit: session,
  files: [
    { kind: 'session', sessionId, ...file },
    { kind: 'video', sessionId, ...film },
  ],
};
const backupHead = {
  format: 'overfoot-backup',
  version: 1,
  createdAt: '2026-04-05T06:07:08.000Z',
  files: [
    { kind: 'session', sessionId, visitId: session.id, fromVideo: 'done', ...file },
    { kind: 'video', sessionId, ...film },
  ],
};

const isOf = (kind: ProblemKind) => (error: unknown) => isProblem(error, kind);

/** Everything that reads a document from outside. */
export function fuzzedParsers(): FuzzedParser[] {
  return [
    {
      name: 'plan',
      document: fixture('example.plan.json'),
      parse: parsePlan,
      isRefusal: isOf('plan'),
      jsonSchema: documentJsonSchema('plan'),
    },
    {
      name: 'session',
      document: session,
      parse: parseSession,
      isRefusal: isOf('session'),
      jsonSchema: documentJsonSchema('session'),
    },
    {
      name: 'recording',
      document: shortRecording(),
      parse: parseRecording,
      isRefusal: isOf('recording'),
      jsonSchema: documentJsonSchema('recording'),
    },
    {
      name: 'sent session, first line',
      document: parcelHead,
      isRefusal: isOf('file'),
      parse: (text) => readManifest(text, followingBytes),
      jsonSchema: jsonSchemaOf(manifestSchema),
    },
    {
      name: 'backup, first line',
      document: backupHead,
      isRefusal: isOf('file'),
      parse: (text) => readBackupManifest(text, followingBytes),
      jsonSchema: jsonSchemaOf(backupManifestSchema),
    },
  ];
}
