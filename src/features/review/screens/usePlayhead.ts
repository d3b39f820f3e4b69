import { useSyncExternalStore } from 'react';
import type { Playhead, PlayheadState } from './playhead';

/** A part of the playhead's state; the component is redrawn when that part changes. */
export function usePlayhead<Part>(playhead: Playhead, select: (state: PlayheadState) => Part): Part {
  return useSyncExternalStore(playhead.subscribe, () => select(playhead.state()));
}
