import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { isProblem } from '#core/problem';
import {
  packParcel,
  unpackParcel,
  type PackedParcel,
  type ParcelSigner,
} from '#features/sharing/store/parcel';
import { newSigningPair, publicHalf, sign } from '#shell/signing';
import { smallRecording } from '../../../../support/smallRecording';
import { smallSession } from '../../../../support/smallSession';

const recording = smallRecording();
const session = { ...smallSession(), sets: [{ ...smallSession().sets[0]!, sessionId: recording.id }] };
const video = new Blob([new Uint8Array(5000).map((_, i) => i % 251)], { type: 'video/webm' });
const sentAt = '2026-04-05T07:00:00.000Z';
const parcel = (withVideo = true): PackedParcel => ({
  sentAt,
  session,
  sets: [{ recording, video: withVideo ? video : null }],
});

/** Signs as a device does, with a new key. */
async function signer(): Promise<NonNullable<ParcelSigner>> {
  const pair = await newSigningPair();
  const key = await publicHalf(pair);
  return async (line) => ({ key, signature: await sign(pair, line) });
}

const bytesOf = async (blob: Blob) => new Uint8Array(await blob.arrayBuffer());

async function problemOf(blob: Blob): Promise<string | null> {
  try {
    await unpackParcel(blob);
    return null;
  } catch (error) {
    if (isProblem(error, 'file', 'recording', 'session')) return error.message;
    throw error;
  }
}

/** A parcel of one session whose packed bytes and manifest are given; all checks that can hold do. */
function around(packed: Uint8Array<ArrayBuffer>, change: object = {}, manifest: object = {}): Blob {
  const file = {
    kind: 'session',
    sessionId: recording.id,
    bytes: packed.length,
    unpackedBytes: 100,
    sha256: bytesToHex(sha256(packed)),
    ...change,
  };
  const head = { format: 'overfoot-parcel', version: 1, visit: session, files: [file], ...manifest };
  return new Blob([`${JSON.stringify(head)}\n`, packed]);
}
const packed = (text: string) => deflateSync(strToU8(text)) as Uint8Array<ArrayBuffer>;
const whole = (data: unknown) => {
  const text = JSON.stringify(data);
  return around(packed(text), { unpackedBytes: strToU8(text).length });
};

describe('packParcel(parcel), unpackParcel(blob)', () => {
  it('give back the session, its recordings and videos as they were', async () => {
    const opened = await unpackParcel(await packParcel(parcel(), null));
    expect(opened.session).toEqual(session);
    expect(opened.sets[0]!.recording).toEqual(recording);
    expect(await bytesOf(opened.sets[0]!.video!)).toEqual(await bytesOf(video));
    expect(opened.sets[0]!.video!.type).toBe('video/webm');
    expect((await unpackParcel(await packParcel(parcel(false), null))).sets[0]!.video).toBeNull();
  });

  it('refuse a parcel in which any byte was changed, or that was cut or added to', async () => {
    const good = await bytesOf(await packParcel(parcel(), await signer()));
    await fc.assert(
      fc.asyncProperty(fc.nat(good.length - 1), fc.integer({ min: 1, max: 255 }), async (at, by) => {
        const changed = good.slice();
        changed[at] = changed[at]! ^ by;
        const text = await problemOf(new Blob([changed]));
        expect(text).not.toBeNull();
        expect(await problemOf(new Blob([good.slice(0, at)]))).not.toBeNull();
      }),
      { numRuns: 60 },
    );
    expect(await problemOf(new Blob([good, 'x']))).toMatch(/not whole/);
  });

  it('tell who signed, and refuse the signature of something else', async () => {
    const sender = await signer();
    const good = await packParcel(parcel(), sender);
    const { key } = await sender(new Uint8Array());
    expect(await unpackParcel(good)).toMatchObject({ sentAt, sender: { key } });
    expect(await unpackParcel(await packParcel(parcel(), null))).toMatchObject({ sentAt, sender: null });

    const [line, signature, ...parts] = (await good.text()).split('\n');
    const later = line!.replace('"painAfter":2', '"painAfter":1');
    expect(later).not.toBe(line);
    const rest = parts.join('\n');
    expect(await problemOf(new Blob([[later, signature, rest].join('\n')]))).toMatch(/after it was signed/);
    for (const wrong of [
      '{}',
      '{"key":"a","signature":"b"}',
      'null,',
      signature!.replace('"key":"B', '"key":"A'),
    ])
      expect(await problemOf(new Blob([[line, wrong, rest].join('\n')])), wrong).toMatch(
        /signature is damaged|after it was signed/,
      );
  });

  it('take parcels of version 1, which nobody signed', async () => {
    const text = JSON.stringify(recording);
    const opened = await unpackParcel(around(packed(text), { unpackedBytes: strToU8(text).length }));
    expect(opened).toMatchObject({ session, sentAt: null, sender: null });
  });

  it('take parcels whose session document is of an older version', async () => {
    const { isUnfilmed, silence, ...version2 } = session;
    const { painLimit, painBySide, check, wentOnAbove, endedBecause, settles, ...older } = version2;
    const text = JSON.stringify(recording);
    const unpackedBytes = strToU8(text).length;
    for (const visit of [
      { ...older, version: 1 },
      { ...version2, version: 2 },
    ])
      expect(await unpackParcel(around(packed(text), { unpackedBytes }, { visit }))).toMatchObject({
        session,
      });
  });

  it('refuse what is something else, or of a later version', async () => {
    for (const text of ['', 'knee', '{}\n', 'null\n', '[1]\n', '\n'])
      expect(await problemOf(new Blob([text]))).toBe('It is not a session from Overfoot.');
    expect(await problemOf(around(packed('{}'), {}, { version: 6 }))).toMatch(
      /of version 6; .*Update the program\.$/,
    );
  });

  it('unpack no more than was stated, and state nothing above the bounds', async () => {
    const bomb = deflateSync(new Uint8Array(30_000_000)) as Uint8Array<ArrayBuffer>;
    expect(await problemOf(around(bomb, { unpackedBytes: 1000 }))).toMatch(/can’t be unpacked/);
    expect(await problemOf(around(bomb, { unpackedBytes: 9_000_000_000 }))).toMatch(
      /damaged at "files\.0\.unpackedBytes"/,
    );
    expect(await problemOf(around(packed('{}'), { unpackedBytes: 50 }))).toMatch(/can’t be unpacked/);
    expect(await problemOf(around(Uint8Array.of(1, 2, 3)))).toMatch(/can’t be unpacked/);
  });

  it('refuse names and fields that do not belong, and recordings of other sets', async () => {
    const other = '11111111-2222-4333-8444-555555555555';
    expect(await problemOf(around(packed('{}'), { name: '../../etc/passwd' }))).toMatch(
      /damaged at "files\.0"/,
    );
    expect(await problemOf(around(packed('{}'), { sessionId: '../x' }))).toMatch(/damaged/);
    expect(await problemOf(around(packed('{}'), { sessionId: other }))).toMatch(/belongs to no set/);
    expect(await problemOf(around(packed('{}'), { bytes: 7 }))).toMatch(/not whole/);
    const file = {
      kind: 'video',
      sessionId: recording.id,
      type: 'video/webm',
      bytes: 2,
      sha256: 'a'.repeat(64),
    };
    expect(await problemOf(around(packed('{}'), {}, { files: [file] }))).toMatch(/belongs to no set/);
    expect(await problemOf(whole({ ...recording, id: other }))).toMatch(/does not match its set/);
  });

  it.each<[string, unknown]>([
    [
      'a million repetitions',
      { ...recording, derived: { ...recording.derived, repetitions: new Array(1_000_000).fill(0) } },
    ],
    ['a number that is none', { ...recording, video: { ...recording.video, durationMs: 1e308 } }],
    ['another prototype', JSON.parse(`{"__proto__":{"format":"overfoot-session"}}`)],
    ['a later version', { ...recording, version: 99 }],
  ])('refuse a session with %s', async (_, data) => {
    expect(await problemOf(whole(data))).toMatch(/recording document/);
  });
});
