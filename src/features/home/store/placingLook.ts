import { findTask } from '#core/exercises/exercises';
import type { Setup } from '#core/measurement/measurement';
import type { Side } from '#core/protocol/side';
import type { LiveFrame } from '#device/live/liveFrame';
import type { RepetitionItem } from '#documents/plan/planDocument';
import type { SetStep } from '#documents/plan/planSteps';
import type { GuideEvent } from '../guide/guideEvent';
import type { GuidePhase } from '../guide/guideState';
import { placingCost } from '../placing/placingCost';
import type { EasyBends } from './easyBends';
import type { HomeCamera } from './homeCamera';
import { partOf } from './homeState';
import type { HomeStore } from './homeStore';
import { createPlacingWatch } from './placingWatch';
import { createStandWatch } from './standWatch';

/** Checks before a set whether the person can be measured where they are, and reports to the guide and the state. */
export interface PlacingLook {
  /** The guide has changed phase. */
  enter(phase: GuidePhase): void;
  push(frame: LiveFrame, step: SetStep): void;
}

interface LookParts {
  home: Pick<HomeStore, 'get' | 'change'>;
  camera: Pick<HomeCamera, 'rates' | 'brightness'>;
  bends: Pick<EasyBends, 'known'>;
  send: (event: GuideEvent) => void;
}

const placingPhases: readonly GuidePhase[] = ['placing', 'bends', 'standing'];

export function createPlacingLook({ home, camera, bends, send }: LookParts): PlacingLook {
  const { get, change } = home;
  const placingWatch = createPlacingWatch();
  let standWatch = createStandWatch();
  let phase: GuidePhase | null = null;

  /** What is looked for now: before the easy bends those. */
  const setupOf = ({ task }: RepetitionItem, side: Side): Setup => {
    const known = bends.known();
    const isBefore = phase !== 'standing' && known === null && findTask(task).preparation.easyBends;
    if (isBefore) return { task: 'two-legged-bend', side };
    return { task, side, ...(known === null ? {} : { bends: known }) };
  };
  return {
    enter(next) {
      phase = next;
      if (next === 'standing') standWatch = createStandWatch();
      if (!placingPhases.includes(next)) change('exercise', { placing: null });
    },
    push(frame, step) {
      const { item, side } = step;
      if (phase === null || !placingPhases.includes(phase) || item.kind === 'hold') return;
      const setup = setupOf(item, side);
      const { seenFps } = camera.rates();
      const facts = {
        isFurniturePlaced: partOf(get(), 'exercise').isFurniturePlaced,
        brightness: camera.brightness(),
        cameraRateHz: seenFps > 0 ? seenFps : undefined,
      };
      const line = phase === 'standing' ? standWatch.push(frame) : undefined;
      if (line !== undefined) send({ kind: 'stand', line });
      const placing = placingWatch.push(frame, setup, facts, item.task);
      if (placing === null) return;
      change('exercise', { placing });
      const { ready, first } = placing;
      send({
        kind: 'placing',
        // In the quiet stand a single bad look must not count for as long as it takes to be green again.
        isGood: phase === 'standing' ? first === null : ready,
        line: first?.sentence ?? null,
        cost: placingCost(first),
      });
    },
  };
}
