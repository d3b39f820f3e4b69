import { sha256 } from '@noble/hashes/sha2.js';
import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import type { ExerciseId } from '#core/exercises/exercises';
import { Problem } from '#core/problem';
import { message } from '#words/messages/message';
import { fromBase64Url, toBase64Url } from './base64Url';
import { planMarker } from './carriesPlan';
import { holdWithoutProgress, planWithoutProgress, withoutProgress } from './itemProgress';
import { parsePlan } from './parsePlan';
import type { PlanDocument, PlanItem } from './planDocument';
import { largestPlanBytes } from './planRanges';

/** Version of the way in which a plan is written into a link; the plan has a version of its own. */
const linkVersion = 1;
/** Of a link whose plan is sealed by a passphrase; earlier programs say that they can't read it. */
const sealedVersion = 2;
/**
 * The beginning of the SHA-256 of what the link carries, which follows it: enough to notice lost or changed
 * characters.
 */
const checkBytes = 6;
/** Other programs may cut off longer links; no plan within its bounds needs as much. */
export const longestFragment = 40_000;
/** Chunk size for inflating, so that a decompression bomb is noticed after one chunk. */
const pieceBytes = 512;

/**
 * A plan as the part of an address after '#', which browsers never send to a server:
 * `plan=1.<deflated JSON, base64url>.<check>`.
 */
export function planToFragment(plan: PlanDocument): string {
  return fragmentOf(linkVersion, packPlan(plan));
}

/** A plan as a link carries it: JSON, deflated; of the oldest version that says as much. */
export function packPlan(plan: PlanDocument): Uint8Array<ArrayBuffer> {
  const text = JSON.stringify(oldestOf(plan));
  return deflateSync(strToU8(text), { level: 9 }) as Uint8Array<ArrayBuffer>;
}

function oldestOf(plan: PlanDocument): object {
  const { thresholds, ...others } = plan;
  if (Object.keys(thresholds).length > 0) return plan;
  const ofVersion8 = { ...others, version: 8 };
  const items = plan.items.map(itemOfVersion6);
  const ofVersion7 = withOneKey(ofVersion8);
  if (ofVersion7 === null) return ofVersion8;
  const { freeItems, autoStep, ...before } = ofVersion7;
  const isOfVersion6 =
    items.every((item) => item !== null) &&
    freeItems.length === 0 &&
    autoStep === planWithoutProgress.autoStep;
  if (!isOfVersion6) return ofVersion7;
  const ofVersion6 = { ...before, items, version: 6 };
  const { language, ...ofVersion5 } = ofVersion6;
  const { perWeek, videoWish, ...ofVersion4 } = ofVersion5;
  if (language !== 'en') return ofVersion6;
  if (perWeek !== null || videoWish !== null) return { ...ofVersion5, version: 5 };
  return { ...ofVersion4, version: 4 };
}

type OfVersion8 = Omit<PlanDocument, 'thresholds' | 'version'> & { version: number };

/** A plan as version 7 wrote it, in the same order; null where it has more keys than one. */
function withOneKey(plan: OfVersion8): (Omit<OfVersion8, 'returnKeys' | 'version'> & object) | null {
  const { returnKeys } = plan;
  if (returnKeys.length > 1) return null;
  const fields = Object.entries({ ...plan, version: 7 }).map(([field, value]) =>
    field === 'returnKeys' ? ['returnKey', returnKeys[0] ?? null] : [field, value],
  );
  return Object.fromEntries(fields) as Omit<OfVersion8, 'returnKeys' | 'version'>;
}

/** Exercises that came with version 7, or later. */
const newExercises: readonly ExerciseId[] = [
  'bridge-hold',
  'single-leg-stance-hold',
  'wall-sit-hold',
  'side-bridge-hold',
];

/** An item without what version 7 added; null where it says something of that. */
function itemOfVersion6(item: PlanItem): object | null {
  const added = Object.entries(item.kind === 'hold' ? holdWithoutProgress : withoutProgress);
  const fields = new Map(Object.entries(item));
  if (newExercises.includes(item.task)) return null;
  if (added.some(([field, nothing]) => fields.get(field) !== nothing)) return null;
  for (const [field] of added) fields.delete(field);
  return Object.fromEntries(fields);
}

/**
 * The link of a plan that a passphrase opens: `plan=2.<age file, base64url>.<check>`.
 *
 * @param sealed  what packPlan() gave, sealed
 */
export function sealedToFragment(sealed: Uint8Array): string {
  return fragmentOf(sealedVersion, sealed);
}

function fragmentOf(version: number, bytes: Uint8Array): string {
  return `${planMarker}${version}.${toBase64Url(bytes)}.${checkOf(bytes)}`;
}

/** What a link carries: a plan, or one that a passphrase opens. */
export type PlanLink = { plan: PlanDocument } | { sealed: Uint8Array<ArrayBuffer> };

/**
 * Reads an untrusted link.
 *
 * @param fragment  with or without its '#'
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readPlanLink(fragment: string): PlanLink {
  const text = fragment.replace(/^#/, '');
  if (text.length > longestFragment) throw new Problem('plan', message('plan-trouble.link-too-long'));
  const [version = '', packedText, check, ...more] = text.slice(planMarker.length).split('.');
  if (!text.startsWith(planMarker) || !/^\d{1,6}$/.test(version))
    throw new Problem('plan', message('plan-trouble.link-empty'));
  if (Number(version) > sealedVersion) {
    throw new Problem(
      'plan',
      message('plan-trouble.link-newer', { version: Number(version), known: sealedVersion }),
    );
  }
  const packed = packedText === undefined ? null : fromBase64Url(packedText);
  if (packed === null || check === undefined || more.length > 0 || check !== checkOf(packed)) {
    throw new Problem('plan', message('plan-trouble.link-broken'));
  }
  return Number(version) === sealedVersion ? { sealed: packed.slice() } : { plan: unpackPlan(packed) };
}

/**
 * Reads what packPlan() made, which may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function unpackPlan(packed: Uint8Array): PlanDocument {
  return parsePlan(inflate(packed));
}

function checkOf(packed: Uint8Array): string {
  return toBase64Url(sha256(packed).subarray(0, checkBytes));
}

/** @throws Problem  where it is not deflated text, or is larger than any plan */
function inflate(packed: Uint8Array): string {
  const unpacked = new Uint8Array(largestPlanBytes);
  let bytes = 0;
  const tooLarge = new Problem('plan', message('plan-trouble.link-large'));
  const stream = new Inflate((piece) => {
    if (bytes + piece.length > unpacked.length) throw tooLarge;
    unpacked.set(piece, bytes);
    bytes += piece.length;
  });
  try {
    for (let from = 0; from < packed.length; from += pieceBytes)
      stream.push(packed.subarray(from, from + pieceBytes), from + pieceBytes >= packed.length);
  } catch (error) {
    if (error === tooLarge) throw tooLarge;
    throw new Problem('plan', message('plan-trouble.link-packed'));
  }
  return strFromU8(unpacked.subarray(0, bytes));
}
