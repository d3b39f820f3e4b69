import { describe, expect, it } from 'vitest';
import { stepTo } from '#device/frames/stepTo';

/** A video element of 25 frames a second that reports, after each seek, the frames given for it, ms. */
class FakeVideo extends EventTarget {
  readonly soughtS: number[] = [];
  private callback: ((now: number, metadata: { mediaTime: number }) => void) | null = null;

  constructor(
    private readonly toldMs: readonly (readonly number[])[],
    private readonly event = 'seeked',
  ) {
    super();
  }
  requestVideoFrameCallback? = (callback: typeof this.callback) => {
    this.callback = callback;
    return 7;
  };
  cancelVideoFrameCallback(): void {
    this.callback = null;
  }
  set currentTime(timeS: number) {
    const told = this.toldMs[this.soughtS.length] ?? [];
    this.soughtS.push(timeS);
    setTimeout(() => {
      this.dispatchEvent(new Event(this.event));
      for (const shownMs of told) {
        const { callback } = this;
        this.callback = null;
        callback?.(0, { mediaTime: shownMs / 1000 });
      }
    });
  }
}

const step = (video: FakeVideo, isAsked = true) =>
  stepTo(video as unknown as HTMLVideoElement, 400, 440, isAsked);

describe('stepTo(video, timeMs, nextMs, isAsked)', () => {
  it('aims between the frame and the next one', async () => {
    const video = new FakeVideo([[400]]);
    expect(await step(video)).toBe('shown');
    expect(video.soughtS).toEqual([0.42]);
  });

  it('waits while a neighbour is still shown', async () => {
    const video = new FakeVideo([[360, 400.4]]);
    expect(await step(video)).toBe('shown');
    expect(video.soughtS).toHaveLength(1);
  });

  it('asks again where only a neighbour comes, and gives up after three times', async () => {
    const late = new FakeVideo([[360], [400]]);
    expect([await step(late), late.soughtS.length]).toEqual(['shown', 2]);
    const never = new FakeVideo([[360], [440], [360], [400]]);
    expect([await step(never), never.soughtS.length]).toEqual(['unsure', 3]);
  });

  it('uses the current frame where the browser reports nothing, and at once where it is not asked', async () => {
    expect(await step(new FakeVideo([]))).toBe('unsure');
    const silent = new FakeVideo([]);
    delete silent.requestVideoFrameCallback;
    expect(await step(silent)).toBe('unsure');
    const video = new FakeVideo([[360]]);
    expect([await step(video, false), video.soughtS.length]).toEqual(['unsure', 1]);
  });

  it('fails where the element does', async () => {
    expect(await step(new FakeVideo([], 'error'))).toBe('failed');
  });
});
