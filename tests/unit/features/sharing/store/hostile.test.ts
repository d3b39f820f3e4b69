import { deflateRawSync } from 'node:zlib';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { beforeAll, describe, expect, it } from 'vitest';
import { Problem } from '#core/problem';
import type { RecordChange, Records } from '#device/storage/records';
import type { Videos } from '#device/storage/videos';
import { parcelBounds } from '#documents/parcel/parcelManifest';
import { parseRecording } from '#documents/recording/parseRecording';
import { createClinic } from '#features/sharing/store/createClinic';
import { newKeyPair, sealFor, type KeyPair } from '#shell/seal';
import { createTestDevice } from '../../../../support/openTestRepository';
import { smallPlan } from '../../../../support/smallPlan';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';

const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
const otherId = '9a7b0c3c-6d2e-4c57-9a5b-0f6f1f0e9d10';

let key: KeyPair;
beforeAll(async () => {
  key = await newKeyPair();
});

/** A clinic's device that counts whatever is written to it. */
async function openClinic() {
  const device = createTestDevice();
  let writes = 0;
  const inner = await device.openRecords();
  const records: Records = {
    ...inner,
    apply(changes: readonly RecordChange[]) {
      writes++;
      return inner.apply(changes);
    },
  };
  const videos: Videos = {
    ...device.videos,
    create(name) {
      writes++;
      return device.videos.create(name);
    },
  };
  const repository = await device.open({ records, videos });
  const { planId, patient } = session;
  await repository.plans.save(planId!, JSON.stringify(smallPlan({ id: planId!, patient })));
  const clinic = createClinic({
    openRepository: () => Promise.resolve({ repository, problem: null }),
    firstKeys: [key],
    readKeys: () => Promise.resolve([key]),
    writeKeys: () => Promise.resolve(),
    saveBlob: () => undefined,
    now: () => new Date('2026-05-06T07:08:09Z'),
  });
  return {
    repository,
    /** What is said of a file that comes in, and how often something was written meanwhile. */
    async take(content: Blob) {
      writes = 0;
      await clinic.openFiles([new File([await sealFor([key.recipient], content)], 'sent.age')]);
      return { ...clinic.store.getState().incoming.at(-1)!, writes };
    },
  };
}

const deflated = (bytes: Uint8Array) => Uint8Array.from(deflateRawSync(bytes, { level: 1 }));

/** A parcel whose parts are the given texts, with sizes and checksums that hold. */
function parcelOf(texts: readonly string[], manifest: object = {}): Blob {
  const parts = texts.map((text) => deflated(Buffer.from(text)));
  const files = parts.map((part, index) => ({
    kind: 'session',
    sessionId: recording.id,
    bytes: part.length,
    unpackedBytes: Buffer.byteLength(texts[index]!),
    sha256: bytesToHex(sha256(part)),
  }));
  const head = { format: 'overfoot-parcel', version: 1, visit: session, files, ...manifest };
  return new Blob([`${JSON.stringify(head)}\n`, ...parts]);
}

const good = JSON.stringify(recording);
/** The session's text with a change. */
const changed = (change: object) => JSON.stringify({ ...recording, ...change });
const repetitions = (count: number, each: unknown) =>
  `{"measuringVersion":1,"repetitions":[${Array.from({ length: count }, () => JSON.stringify(each)).join(',')}]}`;

describe('a file that comes in and means harm', { timeout: 60_000 }, () => {
  it('is kept where it does not, so that the refusals below mean something', async () => {
    const { take } = await openClinic();
    expect(await take(parcelOf([good]))).toMatchObject({ state: 'kept', sentence: null });
  });

  it.each<[string, () => Blob]>([
    [
      '1,000,000 empty repetitions',
      () => parcelOf([good.replace(/"derived":\{/, `"derived":${repetitions(1e6, {})},"x":{`)]),
    ],
    [
      '10,001 repetitions that are each right, one more than fit into a recording',
      () =>
        parcelOf([
          changed({
            derived: {
              ...recording.derived,
              repetitions: Array.from({ length: 10_001 }, () => recording.derived.repetitions[0] ?? {}),
            },
          }),
        ]),
    ],
    ['NaN where a number stands', () => parcelOf([good.replace(/"rateHz":[\d.]+/, '"rateHz":NaN')])],
    ['1e308 where a number stands', () => parcelOf([good.replace(/"rateHz":[\d.]+/, '"rateHz":1e308')])],
    [
      '1e999, which becomes infinite',
      () => parcelOf([good.replace(/"timesMs":\[[^,]+/, '"timesMs":[1e999')]),
    ],
    ['a key named __proto__', () => parcelOf([good.replace('{', '{"__proto__":{"isAdmin":true},')])],
    ['a key named constructor', () => parcelOf([good.replace('{', '{"constructor":{"prototype":{}},')])],
    [
      'a name that leads elsewhere',
      () =>
        parcelOf([good], {
          files: [
            {
              kind: 'session',
              sessionId: '../../index.html',
              bytes: 1,
              unpackedBytes: 1,
              sha256: '0'.repeat(64),
            },
          ],
        }),
    ],
    ['a remark of 10 MB', () => parcelOf([good], { visit: { ...session, remark: 'x'.repeat(10_000_000) } })],
    [
      'a remark that is too long',
      () => parcelOf([good], { visit: { ...session, remark: 'x'.repeat(2001) } }),
    ],
    ['a note of 10 MB in a session', () => parcelOf([changed({ note: 'x'.repeat(10_000_000) })])],
    ['text nested 100,000 deep', () => parcelOf([`${'['.repeat(1e5)}${']'.repeat(1e5)}`])],
    ['the same session twice', () => parcelOf([good, good])],
    [
      'sessions that would unpack to more than all may',
      () => {
        const part = deflated(new Uint8Array(1000));
        const ids = [recording.id, otherId];
        return new Blob([
          `${JSON.stringify({
            format: 'overfoot-parcel',
            version: 1,
            visit: { ...session, sets: ids.map((sessionId) => ({ ...session.sets[0]!, sessionId })) },
            files: ids.map((recordingId) => ({
              kind: 'session',
              sessionId: recordingId,
              bytes: part.length,
              unpackedBytes: parcelBounds.unpackedSessionBytes,
              sha256: bytesToHex(sha256(part)),
            })),
          })}\n`,
          ...[part, part],
        ]);
      },
    ],
  ])('is refused with a sentence, and nothing is written: %s', async (_, make) => {
    const { take } = await openClinic();
    const { state, sentence, writes } = await take(make());
    expect({ state, writes }).toEqual({ state: 'refused', writes: 0 });
    expect(sentence).toMatch(/^[A-Z].{10,400}\.$/s);
    expect(({} as { isAdmin?: boolean }).isAdmin).toBeUndefined();
  });

  it('never replaces another patient’s session by the number of theirs', async () => {
    const { take, repository } = await openClinic();
    await take(parcelOf([good]));
    const before = await repository.recordings.find(recording.id);

    const sameSession = await take(parcelOf([good], { visit: { ...session, patient: 'Another 9' } }));
    expect(sameSession).toMatchObject({ state: 'refused', writes: 0 });
    expect(sameSession.sentence).toContain(`a session of ${session.patient} kept here`);

    const sameRecording = await take(
      parcelOf([changed({ note: 'of somebody else' })], {
        visit: { ...session, id: otherId, patient: 'Another 9' },
      }),
    );
    expect(sameRecording).toMatchObject({ state: 'refused', writes: 0 });
    expect(await repository.recordings.find(recording.id)).toEqual(before);
    expect(await repository.sessions.find(session.id)).toEqual(session);
  });

  it('refuses every number in a recording that is infinite, and every one that is far out of bounds', async () => {
    const { take } = await openClinic();
    const numbers = [...good.matchAll(/"(\w+)":(-?[\d.]+(?:e-?\d+)?)(?=[,}])/g)];
    expect(numbers.length).toBeGreaterThan(20);
    const parsed = new Set<string>();
    const taken = new Set<string>();
    for (const { index, 1: name, 2: number } of numbers) {
      const at = index + name!.length + 3;
      for (const huge of ['1e308', '-1e308', '1e999']) {
        const text = good.slice(0, at) + huge + good.slice(at + number!.length);
        if (canParse(text)) parsed.add(`${name} ${huge}`);
        // The clinic reads by the same parser, and sealing takes time: once for each name will do.
        if (taken.has(name!)) continue;
        taken.add(name!);
        expect(await take(parcelOf([text]))).toMatchObject({ state: 'refused', writes: 0 });
      }
    }
    expect([...parsed]).toEqual([]);
  });
});

function canParse(text: string): boolean {
  try {
    parseRecording(text);
    return true;
  } catch (error) {
    expect(error).toBeInstanceOf(Problem);
    return false;
  }
}
