import { ALL_FORMATS, BlobSource, EncodedPacketSink, Input, type InputVideoTrack } from 'mediabunny';
import { filmBounds, filmFault, type FilmFault } from '#core/keypoints/filmBounds';
import { isProblem, Problem } from '#core/problem';
import { message } from '#words/messages/message';
import { createDecodedSource } from './decodedSource';
import type { FrameSource, VideoFacts } from './frameSource';
import { createSteppedSource } from './steppedSource';
import { tableFault } from './tableFault';
import { wholeWebmPart } from './wholeWebmPart';

/**
 * Opens a video file frame by frame: decoded from the file where the browser can, otherwise by stepping a
 * video element.
 *
 * @throws Problem  empty, not a video, sound only, cut off, or a codec that this browser can't show
 */
export async function openFrameSource(file: File): Promise<FrameSource> {
  if (file.size === 0) {
    throw new Problem('video', message('video-trouble.empty', { file: file.name }));
  }
  const announced = await tableFault(file);
  if (announced === 'more-than-it-holds') throw cutOff(file);
  if (announced === 'too-many-frames') throw outOfBounds(file, { kind: 'frames' });
  const whole = await wholeWebmPart(file);
  const input = new Input({ source: new BlobSource(whole), formats: ALL_FORMATS });
  try {
    const track = await readVideoTrack(input, file);
    const { facts, timesMs } = await readFacts(track, file);
    const fault = filmFault({ ...facts, timesMs });
    if (fault !== null) throw outOfBounds(file, fault);
    if (await track.canDecode().catch(() => false)) return createDecodedSource(input, track, facts);
    const stepped = await createSteppedSource(file, { ...facts, readBy: 'video element' }, timesMs);
    input.dispose();
    if (stepped !== null) return stepped;
    throw unknownFormat(facts.codec);
  } catch (error) {
    input.dispose();
    throw error;
  }
}

async function readVideoTrack(input: Input, file: File): Promise<InputVideoTrack> {
  if (!(await input.canRead().catch(() => false))) {
    throw new Problem('video', message('video-trouble.not-video', { file: file.name }));
  }
  let track: InputVideoTrack | null;
  try {
    track = await input.getPrimaryVideoTrack();
  } catch {
    throw cutOff(file);
  }
  if (track !== null) return track;
  const sound = await input.getPrimaryAudioTrack().catch(() => null);
  if (sound === null) throw cutOff(file);
  throw new Problem('video', message('video-trouble.sound-only', { file: file.name }));
}

async function readFacts(
  track: InputVideoTrack,
  file: File,
): Promise<{ facts: VideoFacts; timesMs: number[] }> {
  try {
    const codec =
      (await track.getCodecParameterString()) ?? String((await track.getInternalCodecId()) ?? 'unknown');
    if ((await track.getCodec()) === null) throw unknownFormat(codec);
    const timesMs: number[] = [];
    for await (const packet of new EncodedPacketSink(track).packets(undefined, undefined, {
      metadataOnly: true,
    })) {
      if (packet.timestamp >= 0) timesMs.push(packet.timestamp * 1000);
      // One too many: no more of what a file announces is ever listed.
      if (timesMs.length > filmBounds.frames) break;
    }
    timesMs.sort((a, b) => a - b);
    const [firstMs, lastMs] = [timesMs[0], timesMs.at(-1)];
    if (firstMs === undefined || lastMs === undefined) throw cutOff(file);
    const spanMs = lastMs - firstMs;
    return {
      timesMs,
      facts: {
        fileName: file.name,
        fileBytes: file.size,
        codec,
        widthPx: await track.getDisplayWidth(),
        heightPx: await track.getDisplayHeight(),
        durationMs: (await track.computeDuration()) * 1000,
        frameRateHz: spanMs > 0 ? ((timesMs.length - 1) * 1000) / spanMs : 0,
        expectedFrames: timesMs.length,
        readBy: 'webcodecs',
      },
    };
  } catch (error) {
    if (isProblem(error, 'video')) throw error;
    throw cutOff(file);
  }
}

function unknownFormat(codec: string): Problem {
  return new Problem('video', message('video-trouble.format', { codec }));
}

function outOfBounds({ name: file }: File, fault: FilmFault): Problem {
  switch (fault.kind) {
    case 'picture': {
      const { widthPx: width, heightPx: height } = fault;
      return new Problem('video', message('video-trouble.picture', { file, width, height }));
    }
    case 'frames':
      return new Problem('video', message('video-trouble.frames', { file, frames: filmBounds.frames }));
    case 'length': {
      const minutes = filmBounds.spanMs / 60_000;
      return new Problem('video', message('video-trouble.length', { file, minutes }));
    }
    case 'gaps':
      return new Problem('video', message('video-trouble.gaps', { file, seconds: filmBounds.gapMs / 1000 }));
  }
}

function cutOff(file: File): Problem {
  return new Problem('video', message('video-trouble.cut-off', { file: file.name }));
}
