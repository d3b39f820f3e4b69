import { createGrowingTrack } from '#core/keypoints/createGrowingTrack';
import { defaultLimits } from '#core/protocol/limits';
import type { Bends } from '#device/live/createBendsReader';
import type { LiveFrame } from '#device/live/liveFrame';
import type { HomeAdapters } from './homeAdapters';

/** Two easy bends before a set: counted, and read for how the body stands to the camera. */
export interface BendsWatch {
  push(frame: LiveFrame): void;
  /** Ends it; null where nothing can be inferred from the bends. */
  finish(): Promise<Bends | null>;
}

/** @param onBend  hears of every complete bend */
export function startBendsWatch(
  { startLiveSet, createBendsReader }: Pick<HomeAdapters, 'startLiveSet' | 'createBendsReader'>,
  first: Pick<LiveFrame, 'timeMs' | 'widthPx' | 'heightPx'>,
  onBend: () => void,
): BendsWatch {
  const { timeMs: startMs, widthPx, heightPx } = first;
  const track = createGrowingTrack(widthPx, heightPx);
  const reader = createBendsReader();
  let told = 0;
  const setup = { task: 'two-legged-bend', side: 'left' } as const;
  const live = startLiveSet({ setup, limits: defaultLimits, widthPx, heightPx, startMs }, (event) => {
    if (event.kind === 'counted') for (; told < event.count; told++) onBend();
  });
  return {
    push(frame) {
      if (frame.widthPx !== widthPx || frame.heightPx !== heightPx || frame.timeMs < startMs) return;
      track.append(frame.timeMs - startMs, frame.row);
      live.push(frame);
    },
    finish() {
      live.close();
      return reader.read(track.copy());
    },
  };
}
