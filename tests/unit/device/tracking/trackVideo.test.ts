import { describe, expect, it } from 'vitest';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { Frame, FrameSource, VideoFacts } from '#device/frames/frameSource';
import type { PoseTracker } from '#device/pose/poseTracker';
import { trackVideo, type TrackingProgress } from '#device/tracking/trackVideo';

class FakePicture {
  closed = false;
  close() {
    this.closed = true;
  }
}

/** A source of frames 40 ms apart that remembers its pictures and whether it was left in order. */
function fakeSource(count: number) {
  const pictures: FakePicture[] = [];
  const state = { finished: false };
  const source: FrameSource = {
    facts: { widthPx: 200, heightPx: 400, expectedFrames: count } as VideoFacts,
    async *frames(_maxHeightPx, afterMs = -1) {
      try {
        for (let i = 0; i < count; i++) {
          if (i * 40 <= afterMs) continue;
          const picture = new FakePicture();
          pictures.push(picture);
          yield { timeMs: i * 40, picture: picture as unknown as ImageBitmap, scale: 2 } satisfies Frame;
        }
      } finally {
        state.finished = true;
      }
    },
    close: () => undefined,
  };
  return { source, pictures, state };
}

/** A tracker whose answer carries the frame's time; `answer` may delay, fail or find nobody. */
function fakeTracker(
  answer: (timeMs: number) => Promise<KeypointRow | null>,
): PoseTracker & { resets: number } {
  return {
    resets: 0,
    load: () => Promise.resolve({ backend: 'wasm', threads: 1 }),
    reset() {
      this.resets++;
      return Promise.resolve();
    },
    estimate(picture, _scale, timeMs) {
      return answer(timeMs).finally(() => picture.close());
    },
    close: () => undefined,
  };
}

const rowAt = (timeMs: number): KeypointRow => new Float32Array(keypointCount * 3).fill(timeMs / 1000);
const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe('trackVideo(source, tracker, options)', () => {
  it('keeps the order of the frames, however late an answer comes', async () => {
    const { source } = fakeSource(5);
    const tracker = fakeTracker(async (timeMs) => {
      await later(timeMs === 40 ? 20 : 1);
      return rowAt(timeMs);
    });
    const track = await trackVideo(source, tracker);
    expect([...track.timesMs]).toEqual([0, 40, 80, 120, 160]);
    expect(track.xPx[3 * keypointCount]).toBeCloseTo(0.12, 6);
    expect([track.widthPx, track.heightPx]).toEqual([200, 400]);
    expect(tracker.resets).toBe(1);
  });

  it('marks frames without a person by score 0', async () => {
    const { source } = fakeSource(3);
    const track = await trackVideo(
      source,
      fakeTracker((timeMs) => Promise.resolve(timeMs === 40 ? null : rowAt(timeMs + 1000))),
    );
    expect(track.score[keypointCount]).toBe(0);
    expect(track.score[2 * keypointCount]).toBeGreaterThan(0);
  });

  it('reports progress frame by frame, up to the end', async () => {
    const told: TrackingProgress[] = [];
    const { source } = fakeSource(4);
    await trackVideo(
      source,
      fakeTracker((timeMs) => Promise.resolve(timeMs < 80 ? null : rowAt(timeMs))),
      { onProgress: (progress) => told.push(progress) },
    );
    expect(told.map(({ framesDone }) => framesDone)).toEqual([1, 2, 3, 4]);
    expect(told.at(-1)).toMatchObject({ framesExpected: 4, framesWithPerson: 2, secondsLeft: 0 });
  });

  it('stops after maxFrames and closes every picture', async () => {
    const { source, pictures, state } = fakeSource(50);
    const track = await trackVideo(
      source,
      fakeTracker((timeMs) => Promise.resolve(rowAt(timeMs))),
      { maxFrames: 7 },
    );
    expect(track.timesMs).toHaveLength(7);
    expect(pictures.every(({ closed }) => closed)).toBe(true);
    expect(state.finished).toBe(true);
  });

  it("ends with the signal's reason when cancelled, and leaves the source in order", async () => {
    const cancel = new AbortController();
    const { source, pictures, state } = fakeSource(50);
    const tracker = fakeTracker((timeMs) => {
      if (timeMs === 120) cancel.abort(new Error('cancelled'));
      return Promise.resolve(rowAt(timeMs));
    });
    await expect(trackVideo(source, tracker, { signal: cancel.signal })).rejects.toThrow('cancelled');
    expect(pictures.length).toBeLessThan(10);
    expect(pictures.every(({ closed }) => closed)).toBe(true);
    expect(state.finished).toBe(true);
  });

  it("throws the tracker's error and leaves the source in order", async () => {
    const { source, state } = fakeSource(50);
    const tracker = fakeTracker((timeMs) =>
      timeMs === 80 ? Promise.reject(new Error('worker gone')) : Promise.resolve(rowAt(timeMs)),
    );
    await expect(trackVideo(source, tracker)).rejects.toThrow('worker gone');
    expect(state.finished).toBe(true);
  });

  it('gives an empty track for a source without frames', async () => {
    const track = await trackVideo(
      fakeSource(0).source,
      fakeTracker(() => Promise.resolve(null)),
    );
    expect(track.timesMs).toHaveLength(0);
  });

  it('reports each row in the order of the frames, however late an answer is', async () => {
    const told: number[] = [];
    const tracker = fakeTracker(async (timeMs) => {
      await later(timeMs === 40 ? 20 : 1);
      return rowAt(timeMs);
    });
    await trackVideo(fakeSource(5).source, tracker, { onRow: ({ timeMs }) => told.push(timeMs) });
    expect(told).toEqual([0, 40, 80, 120, 160]);
  });

  it('continues after earlier rows, and gives and counts all of them', async () => {
    const { source, pictures } = fakeSource(6);
    const tracker = fakeTracker((timeMs) => Promise.resolve(rowAt(timeMs + 1000)));
    const told: number[] = [];
    const progress: TrackingProgress[] = [];
    const track = await trackVideo(source, tracker, {
      earlier: [
        { timeMs: 0, row: rowAt(500) },
        { timeMs: 40, row: null },
      ],
      onRow: ({ timeMs }) => told.push(timeMs),
      onProgress: (one) => progress.push(one),
    });
    expect([...track.timesMs]).toEqual([0, 40, 80, 120, 160, 200]);
    expect([0, 1, 2].map((frame) => track.xPx[frame * keypointCount])).toEqual([
      0.5,
      0,
      expect.closeTo(1.08, 6),
    ]);
    expect(told).toEqual([80, 120, 160, 200]);
    expect(pictures).toHaveLength(4);
    expect(progress[0]).toMatchObject({ framesDone: 3, framesExpected: 6, framesWithPerson: 2 });
    expect(progress.at(-1)).toMatchObject({ framesDone: 6, secondsLeft: 0, framesWithPerson: 5 });
  });
});
