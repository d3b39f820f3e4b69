import type { Bends } from '#device/live/createBendsReader';
import type { LiveFrame } from '#device/live/liveFrame';
import { startBendsWatch, type BendsWatch } from './bendsWatch';
import type { HomeAdapters } from './homeAdapters';

/** The easy bends before a set, and what they have shown; the next sets of the same task and leg use them too. */
export interface EasyBends {
  /** @param onBend  hears of every complete bend */
  watch(first: Pick<LiveFrame, 'timeMs' | 'widthPx' | 'heightPx'>, onBend: () => void): void;
  push(frame: LiveFrame): void;
  /** Reads what was watched. */
  end(): void;
  forget(): void;
  /** Resolves once they are read; null where there are none, or where they tell nothing. */
  read(): Promise<Bends | null>;
  /** As far as they are read. */
  known(): Bends | null;
}

export function createEasyBends(
  adapters: Pick<HomeAdapters, 'startLiveSet' | 'createBendsReader'>,
): EasyBends {
  let watched: BendsWatch | null = null;
  let read: Promise<Bends | null> = Promise.resolve(null);
  let known: Bends | null = null;
  const take = (next: Promise<Bends | null>) => {
    read = next;
    known = null;
    void next.then((bends) => {
      if (read === next) known = bends;
    });
  };
  return {
    watch(first, onBend) {
      watched = startBendsWatch(adapters, first, onBend);
    },
    push: (frame) => watched?.push(frame),
    end() {
      if (watched !== null) take(watched.finish());
      watched = null;
    },
    forget: () => take(Promise.resolve(null)),
    read: () => read,
    known: () => known,
  };
}
