import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdicts } from '#core/scoring/verdict';
import type { GuideEffect } from '#features/home/guide/guideEffect';
import { guidePresses, type GuideEvent } from '#features/home/guide/guideEvent';
import type { GuidePhase } from '#features/home/guide/guideState';
import { smallHold, smallItem } from '../../../../support/smallPlan';
import { unfit } from '../../../../support/unfitWords';
import { optionsFor, Walk } from './walk';

const tempo = { downSeconds: 1.5, pauseSeconds: 0, upSeconds: 1 };
const options = optionsFor([
  smallItem({ repetitions: 3, restSeconds: 5, tempo, feedback: 'every-repetition' }),
  smallItem({
    task: 'lateral-step-down',
    seatHeightCm: null,
    sides: ['left', 'right'],
    sets: 1,
    restSeconds: 0,
  }),
  smallHold({ holdSeconds: 4, restSeconds: 3, sets: 2 }),
]);

const unseen = ['no-pictures', 'not-followed', 'turned'] as const;

const line = fc.constantFrom('Step back.', 'More light.', null);
const heard = fc.option(
  fc.record({
    verdict: fc.constantFrom(...verdicts),
    direction: fc.constantFrom('inward', 'outward', null),
    cue: fc.constantFrom('Belt level.', null),
    shortCue: fc.constantFrom('Belt level', null),
  }),
);
const tick: GuideEvent = { kind: 'tick', nowMs: 0 };
/** Ticks count from the walk's own time: see play. */
const happening: fc.Arbitrary<{ event: GuideEvent; afterMs: number }> = fc.record({
  afterMs: fc.oneof(
    { weight: 6, arbitrary: fc.integer({ min: 0, max: 1500 }) },
    { weight: 2, arbitrary: fc.integer({ min: 1500, max: 20_000 }) },
    { weight: 1, arbitrary: fc.integer({ min: -5000, max: 0 }) },
  ),
  event: fc.oneof<fc.MaybeWeightedArbitrary<GuideEvent>[]>(
    { weight: 6, arbitrary: fc.constant(tick) },
    { weight: 6, arbitrary: fc.record({ kind: fc.constant('repetition' as const), heard }) },
    {
      weight: 3,
      arbitrary: fc.record({
        kind: fc.constant('placing' as const),
        isGood: fc.boolean(),
        line,
        cost: fc.constantFrom('nothing', 'exactness', 'measuring', 'everything'),
      }),
    },
    { weight: 3, arbitrary: fc.record({ kind: fc.constant('person' as const), isPresent: fc.boolean() }) },
    {
      weight: 1,
      arbitrary: fc.record({
        kind: fc.constant('person' as const),
        isPresent: fc.constant(false),
        unseen: fc.constantFrom(...unseen),
      }),
    },
    {
      weight: 1,
      arbitrary: fc.record({
        kind: fc.constant('posture' as const),
        posture: fc.constantFrom('seated', 'standing', null),
      }),
    },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('stand' as const), line }) },
    { weight: 1, arbitrary: fc.record({ kind: fc.constantFrom('counting', 'camera'), works: fc.boolean() }) },
    { weight: 1, arbitrary: fc.record({ kind: fc.constant('page' as const), isVisible: fc.boolean() }) },
    { weight: 1, arbitrary: fc.constant({ kind: 'pain-told' as const }) },
    {
      weight: 3,
      arbitrary: fc.record({ kind: fc.constant('press' as const), press: fc.constantFrom(...guidePresses) }),
    },
  ) as fc.Arbitrary<GuideEvent>,
});

/** Somebody who mostly does what is asked, so that the later phases are reached too. */
const willing: GuideEvent[] = [
  { kind: 'person', isPresent: true },
  { kind: 'placing', isGood: true, line: null, cost: 'nothing' },
];

function play(walk: Walk, { event, afterMs }: { event: GuideEvent; afterMs: number }): void {
  // A clock that runs backward is passed over; a forward one comes in ticks of up to a second and a half.
  walk.send({ kind: 'tick', nowMs: walk.state.nowMs + Math.min(afterMs, 1500) });
  for (let left = afterMs - 1500; left > 0; left -= 400) walk.wait(400);
  if (event.kind !== 'tick') walk.send(event);
}

const isRecordingIn: Record<GuidePhase, 'never' | 'may' | 'held'> = {
  placing: 'held',
  bends: 'never',
  standing: 'may',
  ready: 'may',
  countdown: 'may',
  working: 'may',
  finishing: 'may',
  paused: 'held',
  'set-done': 'never',
  resting: 'never',
  'all-done': 'never',
  stopped: 'never',
};

/** A recorder and a counter that refuse what makes no sense. */
function createWorld() {
  let recorder: 'off' | 'on' | 'paused' = 'off';
  let counting: string | null = null;
  const kept: number[] = [];
  const allowed = {
    start: { from: ['off'], to: 'on' },
    pause: { from: ['on'], to: 'paused' },
    resume: { from: ['paused'], to: 'on' },
    discard: { from: ['on', 'paused'], to: 'off' },
    stop: { from: ['on', 'paused'], to: 'off' },
  } as const;
  return {
    take(effect: GuideEffect) {
      if (effect.kind === 'record') {
        const { from, to } = allowed[effect.action];
        expect(from).toContain(recorder);
        recorder = to;
        if (effect.action === 'stop') kept.push(effect.result);
      }
      if (effect.kind === 'count') counting = effect.action === 'start' ? effect.task : null;
      if (effect.kind === 'say') {
        expect(effect.line).toMatch(/^[A-Z].*\.$/);
        expect(effect.caption).not.toBe('');
        expect(`${effect.line} ${effect.caption}`).not.toMatch(unfit);
        expect(`${effect.line} ${effect.caption}`).not.toMatch(/°|degree/);
      }
    },
    recorder: () => recorder,
    counting: () => counting,
    kept,
  };
}

function check(walk: Walk, world: ReturnType<typeof createWorld>): void {
  walk.effects.forEach(world.take);
  walk.clear();
  const { state } = walk;
  const view = walk.view();
  const { item } = view.step;
  expect(state.recording).toBe(world.recorder());
  const may = isRecordingIn[state.phase];
  if (may === 'never') expect(state.recording).toBe('off');
  if (may === 'held' || (state.phase === 'paused' && state.pausedFrom === null))
    expect(state.recording).not.toBe('on');
  if (item.kind === 'hold') expect(state.recording).toBe('off');
  const countingNow = state.phase === 'working' && item.kind === 'repetitions' ? item.task : null;
  expect(world.counting()).toBe(state.phase === 'bends' ? 'two-legged-bend' : countingNow);
  expect(state.count).toBeLessThanOrEqual(view.ofCount);
  expect(state.pauseReason === null).toBe(state.phase !== 'paused');
  for (const { counted, prescribed } of state.results) {
    if (counted !== null) expect(counted).toBeLessThanOrEqual(prescribed!);
  }
  expect(state.results.filter(({ isRecorded }) => isRecorded)).toHaveLength(world.kept.length);
  for (const number of [view.secondsLeft, view.hold?.secondsLeft, view.hold?.heldMs, state.workedMs]) {
    if (number !== undefined && number !== null) expect(number).toBeGreaterThanOrEqual(0);
  }
}

/** Does what is asked until all is done; how many moments that took. */
function finish(walk: Walk): number {
  walk.send({ kind: 'page', isVisible: true }).send({ kind: 'camera', works: true });
  walk.send({ kind: 'counting', works: true });
  for (let moment = 0; moment < 3000; moment++) {
    const { phase, hasMissed, pauseReason, canCount } = walk.state;
    if (phase === 'all-done' || phase === 'stopped') return moment;
    willing.forEach((event) => walk.send(event));
    if (phase === 'paused' && !['left-picture', ...unseen].includes(pauseReason!)) walk.press('resume');
    // What was missed can't be counted any more: the person ends the set.
    if (phase === 'working' && (hasMissed || !canCount)) walk.press('end-set');
    walk.wait(500);
    if (moment % 4 === 0) walk.send({ kind: 'repetition', heard: null });
  }
  return Infinity;
}

describe('advanceGuide(options, state, event): any order of events', () => {
  const happenings = fc.array(happening, { minLength: 5, maxLength: 60 });
  const stages: (keyof typeof isRecordingIn)[] = ['placing', 'ready', 'working', 'resting'];

  it('never records while paused, never counts too many, and always ends', () => {
    const reached = new Set<GuidePhase>();
    fc.assert(
      fc.property(fc.constantFrom(...stages), happenings, (stage, events) => {
        const walk = new Walk(options);
        const world = createWorld();
        willing.forEach((event) => walk.send(event));
        if (stage === 'resting') walk.until('working').repeat(3);
        walk.until(stage);
        check(walk, world);
        for (const happens of events) {
          play(walk, happens);
          check(walk, world);
        }
        expect(finish(walk)).toBeLessThan(Infinity);
        check(walk, world);
        walk.phases.forEach((phase) => reached.add(phase));
        // Whatever happened, each kept recording belongs to a result of its own.
        expect(new Set(world.kept).size).toBe(world.kept.length);
        if (walk.state.phase === 'all-done') {
          const done = new Set(walk.state.results.map(({ stepIndex }) => stepIndex));
          expect(done.size).toBe(options.steps.length);
        }
      }),
      { numRuns: 250 },
    );
    expect([...reached].sort()).toEqual(Object.keys(isRecordingIn).sort());
  }, 60_000);

  it('stops for pain from anywhere that is not the end', () => {
    fc.assert(
      fc.property(happenings, (events) => {
        const walk = new Walk(options);
        willing.forEach((event) => walk.send(event));
        events.forEach((happens) => play(walk, happens));
        const wasOver = ['all-done', 'stopped'].includes(walk.state.phase);
        walk.press('stop-pain');
        expect(walk.state.recording).toBe('off');
        if (wasOver) return;
        expect(walk.state.stop?.reason).toBe('pain');
        expect(walk.view().presses).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});
