import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { RecordingProblem } from '#device/camera/recordingProblem';
import { recordVideo, type RecordingOptions } from '#device/camera/recordVideo';

/** The part of a browser's recorder that is used; the test makes its events. */
class FakeRecorder {
  state: RecordingState = 'inactive';
  ondataavailable: (event: { data: Blob }) => void = () => undefined;
  onstart: () => void = () => undefined;
  onstop: () => void = () => undefined;
  onerror: (event: object) => void = () => undefined;
  asked: string[] = [];
  waiting = '';
  start(timesliceMs: number) {
    this.asked.push(`start ${timesliceMs}`);
    this.state = 'recording';
    this.onstart();
  }
  pause() {
    this.asked.push('pause');
    this.state = 'paused';
  }
  resume() {
    this.asked.push('resume');
    this.state = 'recording';
  }
  requestData() {
    this.asked.push('requestData');
    this.give(this.waiting);
    this.waiting = '';
  }
  stop() {
    this.state = 'inactive';
    this.give(this.waiting);
    this.onstop();
  }
  give(text: string) {
    this.ondataavailable({ data: new Blob([text]) });
  }
}

class FakeTrack extends EventTarget {
  kind = 'video';
  readyState: MediaStreamTrackState = 'live';
  end() {
    this.readyState = 'ended';
    this.dispatchEvent(new Event('ended'));
  }
}

class FakeStream {
  constructor(readonly tracks: FakeTrack[]) {}
  getVideoTracks() {
    return this.tracks.filter(({ kind }) => kind === 'video');
  }
}

beforeEach(() => {
  vi.stubGlobal('MediaStream', FakeStream);
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

function start(options: Partial<RecordingOptions> = {}) {
  const recorder = new FakeRecorder();
  const track = new FakeTrack();
  const sound = Object.assign(new FakeTrack(), { kind: 'audio' });
  const written: string[] = [];
  const problems: RecordingProblem[] = [];
  const given: { tracks: number; options: MediaRecorderOptions }[] = [];
  const sink = {
    write: async (chunk: Blob) => {
      written.push(await chunk.text());
    },
  };
  const recording = recordVideo(new FakeStream([track, sound]) as unknown as MediaStream, sink, {
    mimeType: 'video/webm',
    onProblem: (problem) => problems.push(problem),
    createRecorder: (stream, asked) => {
      given.push({ tracks: (stream as unknown as FakeStream).tracks.length, options: asked });
      return recorder as unknown as MediaRecorder;
    },
    ...options,
  });
  return { recording, recorder, track, sink, written, problems, given };
}

describe('recordVideo(stream, sink, options)', () => {
  it('asks for a piece every half a second, of the pictures alone', () => {
    const { recorder, given } = start({ bitsPerSecond: 1234 });
    expect(recorder.asked).toEqual(['start 500']);
    const options = { mimeType: 'video/webm', videoBitsPerSecond: 1234, videoKeyFrameIntervalDuration: 1000 };
    expect(given).toEqual([{ tracks: 1, options }]);
  });

  it('refuses pieces that come less often than every second', () => {
    expect(() => start({ timesliceMs: 1001 })).toThrow(RangeError);
    expect(() => start({ timesliceMs: 0 })).toThrow(RangeError);
  });

  it('hands pieces on in order, one after the other, and ends with the last', async () => {
    const { recording, recorder, sink, written } = start();
    const underWay: (() => void)[] = [];
    sink.write = (chunk) =>
      new Promise((resolve) => {
        underWay.push(() => {
          void chunk
            .text()
            .then((text) => written.push(text))
            .then(() => resolve());
        });
      });
    recorder.give('one');
    recorder.give('');
    recorder.give('two');
    recorder.waiting = 'three';
    const ended = recording.stop();
    for (const index of [0, 1, 2]) {
      await vi.waitFor(() => expect(underWay).toHaveLength(index + 1));
      underWay[index]!();
    }
    expect(await ended).toEqual({ bytes: 11, problem: null });
    expect(written).toEqual(['one', 'two', 'three']);
    expect(await recording.stop()).toEqual({ bytes: 11, problem: null });
  });

  it('hands on what it has before a pause', async () => {
    const { recording, recorder, written } = start();
    recorder.waiting = 'before the pause';
    recording.pause();
    recording.pause();
    await vi.waitFor(() => expect(written).toEqual(['before the pause']));
    recording.resume();
    recording.resume();
    expect(recorder.asked).toEqual(['start 500', 'requestData', 'pause', 'resume']);
    expect(await recording.stop()).toMatchObject({ problem: null });
  });

  it('gives the time in the video, without the pauses', async () => {
    vi.useFakeTimers({ toFake: ['performance'] });
    const startMs = performance.now();
    const { recording } = start();
    vi.advanceTimersByTime(3000);
    recording.pause();
    vi.advanceTimersByTime(10_000);
    recording.resume();
    vi.advanceTimersByTime(2000);
    const at = (ms: number) => recording.videoTimeMs(startMs + ms);
    expect([-1, 0, 2999, 3000, 12_999, 13_000, 14_500].map(at)).toEqual([
      null,
      0,
      2999,
      null,
      null,
      3000,
      4500,
    ]);
    await recording.stop();
    expect(at(15_000)).toBeNull();
    expect(at(14_999)).toBe(4999);
  });

  it('reports at once that the camera has ended, keeps the last piece, and ends', async () => {
    const { recording, recorder, track, problems, written } = start();
    recorder.give('one');
    recorder.waiting = 'last';
    track.end();
    expect(problems.map(({ kind }) => kind)).toEqual(['camera-ended']);
    expect(await recording.ended).toMatchObject({ bytes: 7, problem: { kind: 'camera-ended' } });
    expect(written).toEqual(['one', 'last']);
    expect(problems).toHaveLength(1);
  });

  it('reports that the recorder has stopped by itself', async () => {
    const { recording, recorder, problems } = start();
    recorder.stop();
    expect((await recording.ended).problem).toMatchObject({ kind: 'recorder-failed' });
    expect(problems).toHaveLength(1);
  });

  it('reports that the recorder failed', async () => {
    const { recording, recorder, problems } = start();
    recorder.onerror({ error: new Error('encoder') });
    expect((await recording.ended).problem).toMatchObject({ kind: 'recorder-failed' });
    expect(problems[0]!.message).toMatch(/What was recorded until then is kept/);
  });

  it('ends where a piece can’t be kept, says why, and writes no later one', async () => {
    const { recording, recorder, sink, written, problems } = start();
    const write = sink.write;
    sink.write = vi
      .fn(write)
      .mockImplementationOnce(write)
      .mockRejectedValueOnce(new Error('The storage is full. Delete something.'));
    for (const text of ['one', 'two', 'three']) recorder.give(text);
    expect(await recording.ended).toMatchObject({ bytes: 3, problem: { kind: 'not-kept' } });
    expect(written).toEqual(['one']);
    expect(problems[0]!.message).toMatch(/could not be kept.*The storage is full\. Delete something\.$/);
    expect(recorder.state).toBe('inactive');
  });

  it('can’t start without pictures, or where the browser does not record the type', () => {
    const none = new FakeStream([]) as unknown as MediaStream;
    const sink = { write: () => Promise.resolve() };
    expect(() => recordVideo(none, sink, { mimeType: 'video/webm' })).toThrow(
      expect.objectContaining({ kind: 'camera-ended' }),
    );
    const refuse = () => {
      throw new Error('NotSupportedError');
    };
    expect(() => start({ createRecorder: refuse })).toThrow(expect.objectContaining({ kind: 'no-recorder' }));
  });
});
