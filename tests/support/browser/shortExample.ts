import { readFileSync } from 'node:fs';
import {
  ALL_FORMATS,
  BufferSource,
  BufferTarget,
  Conversion,
  Input,
  Mp4OutputFormat,
  Output,
} from 'mediabunny';
import { parseRecording } from '#documents/recording/parseRecording';
import { fixture } from './headlessPage';

/** In the quiet sitting after the third repetition of six, s. */
export const shortExampleS = 12.7;

/** The rendered example: six repetitions with the right leg, by an invented person. */
export const example = parseRecording(readFileSync(fixture('example.session.json'), 'utf8'));

/** Its first repetitions: two in line, and one that is not. */
export const shortRepetitions = example.derived.repetitions.filter(
  ({ events }) => events.endMs < shortExampleS * 1000,
);

/** The example's video up to there: half as many pictures, which are read, measured and written in half the time. */
export async function shortExample(): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const source = new BufferSource(readFileSync(fixture('example.mp4')));
  const target = new BufferTarget();
  const conversion = await Conversion.init({
    input: new Input({ source, formats: ALL_FORMATS }),
    output: new Output({ format: new Mp4OutputFormat(), target }),
    trim: { start: 0, end: shortExampleS },
  });
  await conversion.execute();
  return { name: 'example.mp4', mimeType: 'video/mp4', buffer: Buffer.from(target.buffer!) };
}
