import { RecordingProblem } from './recordingProblem';

/**
 * Types of recordings, first the ones to be preferred. WebM before MP4: its pieces can be read however the file ends,
 * while the pieces of an MP4 come only as often as the encoder begins afresh, and a lost end is seconds longer.
 */
export const recordingTypes = [
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
