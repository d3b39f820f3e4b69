import { describe, expect, it } from 'vitest';
import { findExercise } from '#core/exercises/exercises';
import { stagesFault, stagesSchema } from '#documents/library/stages';
import { atStage } from '#documents/plan/itemProgress';
import { moved, renamed, without, withStage } from '#features/planning/rules/stageEdits';
import { smallHold, smallItem } from '../../../../support/smallPlan';

const { stages } = findExercise('lateral-step-down');
const ids = (some: readonly { id: string }[]) => some.map(({ id }) => id);
const [first, second] = stages;

describe('renamed, moved, without', () => {
  it('change one stage and leave the others', () => {
    const other = renamed(stages, second!.id, 'Other words.');
    expect(other[1]).toEqual({ ...second, words: 'Other words.' });
    expect(other.filter((_, i) => i !== 1)).toEqual(stages.filter((_, i) => i !== 1));
    expect(ids(moved(stages, first!.id, 1)).slice(0, 2)).toEqual([second!.id, first!.id]);
    expect(ids(moved(stages, second!.id, -1)).slice(0, 2)).toEqual([second!.id, first!.id]);
    expect(ids(without(stages, first!.id))).toEqual(ids(stages).slice(1));
  });

  it('leave the ends where they are, and the last one', () => {
    expect(moved(stages, first!.id, -1)).toEqual(stages);
    expect(moved(stages, stages.at(-1)!.id, 1)).toEqual(stages);
    expect(without([first!], first!.id)).toEqual([first]);
  });
});

describe('withStage(stages, item, words)', () => {
  const item = smallItem({
    task: 'lateral-step-down',
    seatHeightCm: null,
    stepHeightCm: 12,
    bendDeg: 40,
    support: 'fingertip',
    load: { kind: 'weight', level: '2 kg', where: 'hand' },
    tempo: { downSeconds: 3, pauseSeconds: 0, upSeconds: 2 },
    repetitions: 9,
    upTo: { min: 12, max: 14 },
  });

  it('adds what the item is now as the hardest stage', () => {
    const stage = withStage(stages, item, 'From 12 cm, with a weight.').at(-1)!;
    expect(stage).toEqual({
      id: 'from-12-cm-with-a-weight',
      words: 'From 12 cm, with a weight.',
      stepHeightCm: 12,
      bendDeg: 40,
      support: 'fingertip',
      load: { kind: 'weight', level: '2 kg', where: 'hand' },
      tempo: { downSeconds: 3, pauseSeconds: 0 },
      start: 9,
      upTo: { min: 12, max: 14 },
    });
    // A plan says of it how far a set goes, since the patient's device does not know the stage.
    const again = atStage(smallItem({ task: 'lateral-step-down' }), stage);
    expect(again).toMatchObject({
      stage: stage.id,
      repetitions: 9,
      stepHeightCm: 12,
      upTo: { min: 12, max: 14 },
    });
    expect(atStage(item, first!)).toMatchObject({ stage: first!.id, upTo: null });
  });

  it('gives an id that neither the practice nor the library has, and can be kept', () => {
    const twice = withStage(withStage(stages, item, 'Same.'), item, 'Same.');
    expect(ids(twice).slice(-2)).toEqual(['same', 'same-2']);
    expect(withStage([], item, first!.id).at(-1)!.id).toBe(`${first!.id}-2`);
    expect(withStage([], item, '……').at(-1)!.id).toBe('stage');
    const long = withStage(twice, item, 'Very long words '.repeat(9));
    expect(stagesFault({ exercise: 'lateral-step-down', stages: stagesSchema.parse(long) })).toBeNull();
  });

  it('adds a hold with its holds', () => {
    const hold = smallHold({ holds: 4, holdSeconds: 20 });
    expect(withStage([], hold, 'Four of 20 s.')).toEqual([
      { id: 'four-of-20-s', words: 'Four of 20 s.', holds: { count: 4, seconds: 20 } },
    ]);
  });
});
