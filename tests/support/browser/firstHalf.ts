import { readFileSync } from 'node:fs';
import { fixture } from './headlessPage';

/** The bytes of fixtures/short.mp4 up to its middle: one whole repetition, which the network needs less time for. */
export function firstHalf(): Buffer {
  const bytes = readFileSync(fixture('short.mp4'));
  return bytes.subarray(0, Math.round(bytes.length / 2));
}
