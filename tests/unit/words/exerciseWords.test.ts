import { describe, expect, it } from 'vitest';
import { exerciseIds, taskIds } from '#core/exercises/exercises';
import { needIds } from '#core/exercises/needs';
import { loadKinds } from '#core/protocol/load';
import { sides } from '#core/protocol/side';
import { kitList } from '#documents/plan/kitList';
import { newItem } from '#documents/plan/planDraft';
import {
  cameraPlace,
  exerciseCautions,
  exerciseFelt,
  exerciseName,
  exerciseSetup,
  exerciseSteps,
  sideHint,
  startLine,
} from '#words/exerciseWords';
import { unfit } from '../../support/unfitWords';

describe.each(exerciseIds)('the words of %s', (id) => {
  it('are whole sentences, for either side', () => {
    for (const side of sides) {
      const steps = exerciseSteps(id, side);
      expect(steps.length).toBeGreaterThan(1);
      for (const sentence of [
        ...exerciseSetup(id, side),
        startLine(id, side),
        exerciseFelt(id, side),
        cameraPlace(id) ?? 'None.',
        ...steps,
        ...exerciseCautions(id),
      ]) {
        expect(sentence).toMatch(/^[A-Z][^{}]*\.$/);
        expect(sentence).not.toMatch(unfit);
        expect(sentence).not.toMatch(/\b(prevent|injur|risk|heal|cure)/i);
      }
    }
  });
});

it('every exercise has a name of its own', () => {
  expect(new Set(exerciseIds.map(exerciseName)).size).toBe(exerciseIds.length);
});

it('every task says how to recognise the working side', () => {
  for (const id of taskIds) expect(sideHint(id)).toMatch(/^[A-Z].*\.$/);
});

it('the set-up names the working side and the other one', () => {
  expect(exerciseSetup('split-stance-sit-to-stand', 'left')).toContain(
    'Put your left foot in front and your right foot a little behind it.',
  );
});

it('everything that an exercise needs has a sentence', () => {
  const loads = loadKinds.map((kind) => ({
    ...newItem('single-leg-squat'),
    load: { kind, level: 'light', where: 'ankle' as const },
  }));
  const kit = kitList([...exerciseIds.map(newItem), ...loads], 'either');
  expect(kit.length).toBe(needIds.length + 2);
  for (const { sentence } of kit) expect(sentence).toMatch(/^[A-Z].*\.$/);
});
