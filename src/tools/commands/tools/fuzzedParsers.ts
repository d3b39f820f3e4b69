import { readFileSync } from 'node:fs';
import { deflateSync, strToU8 } from 'fflate';
import { mapSavedCurves } from '#core/measures/measures';
import { isProblem, Problem, type ProblemKind } from '#core/problem';
import { defaultLimits } from '#core/protocol/limits';
import { tableFault } from '#device/frames/tableFault';
import { backupManifestSchema, readBackupManifest } from '#documents/backup/backupManifest';
import { handOverSchema, readHandOverManifest } from '#documents/backup/handOverManifest';
import { emptyLibrary } from '#documents/library/libraryDocument';
import { libraryKind } from '#documents/library/libraryKind';
import { assertWhole, manifestSchema, readManifest } from '#documents/parcel/parcelManifest';
import { readSender } from '#documents/parcel/parcelSender';
import { newPatient } from '#documents/patient/newPatient';
import { parsePlan } from '#documents/plan/parsePlan';
import { packPlan, readPlanLink, sealedToFragment } from '#documents/plan/planLink';
import { parseQuestionnaire } from '#documents/questionnaire/parseQuestionnaire';
import { parseDocument } from '#documents/reading/readDocument';
import { parseRecording } from '#documents/recording/parseRecording';
import { notAsked } from '#documents/session/notAsked';
import { parseSession } from '#documents/session/parseSession';
import { openBackup } from '#features/sharing/store/backup/openBackup';
import { packPart } from '#features/sharing/store/packedPart';
import { unpackParcel } from '#features/sharing/store/parcel';
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
  version: 4,
  ...notAsked,
  painLimit: 3,
  check: { asked: 'new', signs: ['gave-way'], takenBack: ['calf'] },
  wentOnAbove: [{ when: 'during', score: 4, limit: 3, at: '2026-04-05T06:17:08.000Z' }],
  endedBecause: { reason: 'gave-way', fell: false },
  settles: [
    {
      visitId: '3f4a6d0e-93ff-4a8e-8f8d-5a6c1b2e7d11',
      by: 'professional',
      who: 'an invented doctor',
      at: '2026-04-05T06:08:08.000Z',
    },
  ],
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
      conditions: {
        stage: 'seat-46',
        seatHeightCm: 46,
        stepHeightCm: null,
        support: 'fingertip',
        load: { kind: 'tube', level: 'light', where: 'ankle' },
        footwear: 'shoes',
        freeLeg: 'front',
        feedback: 'none',
        isTest: true,
      },
    },
  ],
};

/** Of FHIR R4, as a practice imports it. */
const questionnaire = {
  resourceType: 'Questionnaire',
  url: 'https://example.org/fhir/Questionnaire/invented',
  version: '1',
  title: 'Invented',
  item: [
    {
      linkId: 'g',
      type: 'group',
      text: 'Stairs',
      item: [{ linkId: 'a', type: 'integer', text: 'How many?' }],
    },
    {
      linkId: 'b',
      type: 'choice',
      text: 'Which?',
      answerOption: [
        { valueCoding: { system: 'urn:invented', code: 'x', display: 'X' } },
        { valueString: 'y' },
      ],
    },
  ],
};

const patient = newPatient('invented-heron', '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66', session.startedAt);

const inLibrary = (digit: number) => ({
  id: `${digit}a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66`,
  at: session.startedAt,
  by: 'AB',
});
const library = {
  ...emptyLibrary,
  exercises: [{ ...inLibrary(1), name: 'Heel slides', how: 'Slowly.', dose: '2 sets of 10' }],
  texts: [{ ...inLibrary(2), name: 'First weeks', text: 'Little and often.' }],
  limits: [{ ...inLibrary(3), task: 'lateral-step-down', limits: defaultLimits }],
  templates: [{ ...inLibrary(4), name: 'Knee', draft: { items: [], painLimit: 2 } }],
  stages: [
    {
      at: session.startedAt,
      by: 'AB',
      exercise: 'wall-sit-hold',
      stages: [{ id: 'short', words: 'Ten seconds.', holds: { count: 3, seconds: 10 } }],
    },
  ],
  removed: [{ kind: 'limits', key: 'single-leg-squat', at: session.startedAt }],
};

const file = { bytes: 120, unpackedBytes: 400, sha256: 'a0'.repeat(32) };
const film = { bytes: 900, sha256: 'b1'.repeat(32), type: 'video/webm' };
const { sessionId } = session.sets[0]!;
/** What follows the first lines below, bytes. */
const followingBytes = 1020;

const parcelHead = {
  format: 'overfoot-parcel',
  version: 5,
  sentAt: '2026-04-05T07:00:00.000Z',
  visit: session,
  files: [
    { kind: 'session', sessionId, ...file },
    { kind: 'video', sessionId, ...film },
  ],
};
const backupHead = {
  format: 'overfoot-backup',
  version: 2,
  createdAt: '2026-04-05T06:07:08.000Z',
  files: [
    { kind: 'session', sessionId, visitId: session.id, fromVideo: 'done', ...file },
    { kind: 'video', sessionId, ...film },
  ],
};

const isOf = (kind: ProblemKind) => (error: unknown) => isProblem(error, kind);
const isAny = (error: unknown) => error instanceof Problem;

/** A mutated document where it still is what it was made as; null where it is not JSON any more, or of another kind. */
function fieldsOf(text: string): Record<string, unknown> | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : null;
  } catch {
    return null;
  }
}

const listOf = (value: unknown): unknown[] => (Array.isArray(value) ? value : []);
const bytesOf = (value: unknown) =>
  Uint8Array.from(listOf(value), (one) => (typeof one === 'number' ? one : 0));

/** A link whose checksum is that of whatever it carries; text that is no list of parts is the link itself. */
function fragmentOf(text: string): string {
  const fields = fieldsOf(text);
  if (fields === null) return text;
  const bytes =
    'bytes' in fields ? bytesOf(fields['bytes']) : deflateSync(strToU8(JSON.stringify(fields['plan']) ?? ''));
  return sealedToFragment(bytes).replace('=2.', `=${JSON.stringify(fields['version'])}.`);
}

/** A file whose parts have the sizes and checksums that its first line says; it may say anything else. */
function packedFile(text: string, secondLine: boolean): Blob {
  const { head, sender, parts } = fieldsOf(text) ?? {};
  const packed = listOf(parts).map((part) => {
    const { content, ...entry } = (fieldsOf(JSON.stringify(part) ?? '') ?? {}) as { content?: unknown };
    const { part: bytes, facts } = packPart(content ?? null);
    return { bytes, entry: { ...facts, ...entry } };
  });
  const first = { ...(head as object), files: packed.map(({ entry }) => entry) };
  const lines = [first, ...(secondLine ? [sender ?? null] : [])].map((line) => `${JSON.stringify(line)}\n`);
  return new Blob([...lines, ...packed.map(({ bytes }) => bytes)]);
}

/** A box of a video file: its name, and the words of 32 bits or the boxes that it holds. */
type VideoBox = [name: string, content: (number | VideoBox)[]];

/** Tables of a film of three frames, as recorders write them. */
const tables: VideoBox[] = [
  ['stts', [0, 1, 3, 512]],
  ['ctts', [0, 1, 3, 0]],
  ['stsz', [0, 0, 3, 90, 80, 70]],
  ['stco', [0, 1, 256]],
];
/** The word 'vide'. */
const ofPictures = 0x76696465;
const media: VideoBox[] = [
  ['hdlr', [0, 0, ofPictures, 0, 0, 0]],
  ['minf', [['stbl', tables]]],
];
const videoTables: VideoBox[] = [
  ['ftyp', [0]],
  ['moov', [['trak', [['mdia', media]]]]],
];

/** The bytes of boxes, which may be anything; a box whose name became a number says that it is so long. */
function boxBytes(boxes: unknown): Buffer {
  return Buffer.concat(
    listOf(boxes).map((box) => {
      if (!Array.isArray(box)) return word(box);
      const [name, content] = box as unknown[];
      const inner = boxBytes(content);
      return Buffer.concat([
        word(typeof name === 'number' ? name : inner.length + 8),
        Buffer.from((typeof name === 'string' ? name : '').slice(0, 4).padEnd(4), 'latin1'),
        inner,
      ]);
    }),
  );
}

function word(value: unknown): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32BE(typeof value === 'number' ? value >>> 0 : 0);
  return bytes;
}

const anything = '{}';

/** Everything that reads what comes from outside: documents, links, files, and the tables of a video. */
export function fuzzedParsers(): FuzzedParser[] {
  const plan = fixture('example.plan.json');
  const recording = { ...shortRecording(), id: sessionId };
  return [
    {
      name: 'plan',
      file: 'plan',
      document: plan,
      parse: parsePlan,
      isRefusal: isOf('plan'),
      jsonSchema: documentJsonSchema('plan'),
    },
    {
      name: 'library',
      file: 'library',
      document: library,
      parse: (text) => parseDocument(text, libraryKind),
      isRefusal: isOf('file'),
      jsonSchema: documentJsonSchema('library'),
    },
    {
      name: 'plan link, around its plan',
      file: 'plan-link',
      document: { version: 1, plan },
      parse: (text) => readPlanLink(fragmentOf(text)),
      isRefusal: isOf('plan'),
      jsonSchema: anything,
    },
    {
      name: 'plan link, its bytes',
      file: 'plan-link-bytes',
      document: { version: 1, bytes: [...packPlan(parsePlan(JSON.stringify(plan)))] },
      parse: (text) => readPlanLink(fragmentOf(text)),
      isRefusal: isOf('plan'),
      jsonSchema: anything,
    },
    {
      name: 'session',
      file: 'session',
      document: session,
      parse: parseSession,
      isRefusal: isOf('session'),
      jsonSchema: documentJsonSchema('session'),
    },
    {
      name: 'recording',
      file: 'recording',
      document: recording,
      parse: parseRecording,
      isRefusal: isOf('recording'),
      jsonSchema: documentJsonSchema('recording'),
    },
    {
      name: 'questionnaire',
      file: 'questionnaire',
      document: questionnaire,
      parse: parseQuestionnaire,
      isRefusal: isOf('file'),
      jsonSchema: anything,
    },
    {
      name: 'sent session, first line',
      file: 'parcel-head',
      document: parcelHead,
      isRefusal: isOf('file'),
      parse: (text) => {
        const manifest = readManifest(text);
        assertWhole(manifest, followingBytes);
        return manifest;
      },
      jsonSchema: jsonSchemaOf(manifestSchema),
    },
    {
      name: 'sent session, its signature',
      file: 'parcel-sender',
      document: { key: 'B'.repeat(87), signature: 'c'.repeat(86) },
      isRefusal: isOf('file'),
      parse: readSender,
      jsonSchema: anything,
    },
    {
      name: 'sent session, whole',
      file: 'parcel',
      document: {
        head: parcelHead,
        sender: null,
        parts: [{ kind: 'session', sessionId, content: recording }],
      },
      isRefusal: isAny,
      parse: async (text) => (await unpackParcel(packedFile(text, true))).session,
      jsonSchema: documentJsonSchema('session'),
    },
    {
      name: 'hand-over, first line',
      file: 'hand-over-head',
      document: { ...backupHead, format: 'overfoot-hand-over', version: 1, by: 'AB' },
      parse: readHandOverManifest,
      isRefusal: isOf('file'),
      jsonSchema: jsonSchemaOf(handOverSchema),
    },
    {
      name: 'backup, first line',
      file: 'backup-head',
      document: backupHead,
      isRefusal: isOf('file'),
      parse: (text) => readBackupManifest(text, followingBytes),
      jsonSchema: jsonSchemaOf(backupManifestSchema),
    },
    {
      name: 'backup, whole',
      file: 'backup',
      document: {
        head: backupHead,
        parts: [
          { kind: 'patient', content: patient },
          { kind: 'visit', content: session },
          { kind: 'session', sessionId, visitId: session.id, fromVideo: 'done', content: recording },
          { kind: 'plan', content: { id: 'a', savedAt: session.startedAt, text: '{}' } },
          { kind: 'note', content: { name: 'draft', text: 'An invented note.' } },
        ],
      },
      isRefusal: isAny,
      parse: async (text) => {
        const kinds: string[] = [];
        for await (const { kind } of (await openBackup(packedFile(text, false))).entries()) kinds.push(kind);
        return kinds;
      },
      jsonSchema: anything,
    },
    {
      name: 'tables of a video',
      file: 'video-tables',
      document: videoTables,
      isRefusal: isOf('video'),
      parse: async (text) => {
        const boxes = fieldsOf(text);
        const fault = await tableFault(new Blob([boxes === null ? text : Uint8Array.from(boxBytes(boxes))]));
        if (fault !== null) throw new Problem('video', `Its tables announce ${fault}.`);
        return null;
      },
      jsonSchema: anything,
    },
  ];
}
