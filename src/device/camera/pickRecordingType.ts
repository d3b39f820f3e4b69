import { RecordingProblem } from './recordingProblem';

/**
 * Types of recordings, preferred ones first.
 *
 * WebM before MP4: a piece of WebM can end with any picture, one of MP4 only with a key picture, so a killed
 * tab loses more of an MP4. H.264 first: tracking needs the processor, and without a graphics card 30
 * pictures a second of 720 x 1280 took 0.15 of a core as H.264, 0.4 as VP9, and 0.5 to 0.7 as VP8, which then
 * dropped pictures.
 */
export const recordingTypes = [
  'video/webm;codecs=h264',
  'video/webm;codecs=vp9',
  'video/webm;codecs=vp8',
  'video/webm',
  'video/mp4;codecs=avc1.640028',
  'video/mp4',
] as const;

type TypeTest = (type: string) => boolean;

/**
 * The best type that this browser records.
 *
 * @throws RecordingProblem  'no-recorder'
 */
export function pickRecordingType(isSupported: TypeTest | undefined = browserTest()): string {
  const type = isSupported === undefined ? undefined : recordingTypes.find(isSupported);
  if (type === undefined) throw new RecordingProblem('no-recorder');
  return type;
}

function browserTest(): TypeTest | undefined {
  const { MediaRecorder: recorder } = globalThis as { MediaRecorder?: typeof MediaRecorder };
  return recorder === undefined ? undefined : (type) => recorder.isTypeSupported(type);
}
