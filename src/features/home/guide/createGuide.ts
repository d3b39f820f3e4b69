import { advanceGuide, startGuide } from './advanceGuide';
import type { GuideEffect } from './guideEffect';
import type { GuideEvent } from './guideEvent';
import type { GuideOptions, GuideState } from './guideState';
import { guideView, type GuideView } from './guideView';

export interface Guide {
  send(event: GuideEvent): void;
  state(): GuideState;
  view(): GuideView;
}

/**
 * The guide through all sets; its effects are run at once. See advanceGuide.
 *
 * @param act  runs an effect; events sent from within it are handled afterwards
 */
export function createGuide(options: GuideOptions, nowMs: number, act: (effect: GuideEffect) => void): Guide {
  let { state, effects } = startGuide(options, nowMs);
  const waiting: GuideEvent[] = [];
  let isActing = false;
  const work = () => {
    if (isActing) return;
    isActing = true;
    try {
      for (;;) {
        const wanted = effects;
        effects = [];
        wanted.forEach(act);
        const event = waiting.shift();
        if (event === undefined) return;
        ({ state, effects } = advanceGuide(options, state, event));
      }
    } finally {
      isActing = false;
    }
  };
  work();
  return {
    send(event) {
      waiting.push(event);
      work();
    },
    state: () => state,
    view: () => guideView(options, state),
  };
}
