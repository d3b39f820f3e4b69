import { describe, expect, it } from 'vitest';
import { defaultLimits, withLimit } from '#core/protocol/limits';
import { buildCourse } from '#features/patients/rules/buildCourse';
import { conditionsWords, markSentence, meanWords, peaksWords } from '#features/patients/rules/courseWords';
import {
  courseMargins,
  lastWeeksOf,
  layOutCourse,
  panelHeights,
} from '#features/patients/rules/layOutCourse';
import { listedRecording } from '../../../../support/listedSession';
import { asked, measured, session } from '../../../../support/measuredSession';

describe('buildCourse(sessions, plans)', () => {
  it('puts both sides of an exercise into one panel, oldest first', () => {
    const { panels } = buildCourse(
      [
        session('2026-04-08', [measured(), measured({ side: 'left' })]),
        session('2026-04-06', [measured({ side: 'left' })]),
      ],
      [],
    );
    expect(panels.map(({ task }) => task)).toEqual(['lateral-step-down']);
    expect(panels[0]!.tracks.map(({ side, sets }) => [side, sets.length])).toEqual([
      ['left', 2],
      ['right', 1],
    ]);
    const [first, second] = panels[0]!.tracks[0]!.sets;
    expect(first!.atMs).toBeLessThan(second!.atMs);
  });

  it('cuts a run wherever what is known of the conditions differs, what is not known included', () => {
    const sets = [
      measured(),
      measured(),
      measured({ asked: { ...asked, seatHeightCm: 42 } }),
      measured({ asked: { ...asked, seatHeightCm: 42 }, bendsFilmed: false }),
      measured({ asked: null, bendsFilmed: false }),
    ];
    const { panels } = buildCourse(
      sets.map((set, index) => session(`2026-04-0${index + 1}`, [set])),
      [],
    );
    expect(panels[0]!.tracks[0]!.runs.map((run) => run.length)).toEqual([2, 1, 1, 1]);
  });

  it('cuts a run where the limits change', () => {
    const wider = withLimit(defaultLimits, 'knee-angle', 'most', 14);
    const sets = [measured(), measured({ limits: wider }), measured({ limits: wider })];
    const { panels } = buildCourse(
      sets.map((set, index) => session(`2026-04-0${index + 1}`, [set])),
      [],
    );
    expect(panels[0]!.tracks[0]!.runs.map((run) => run.length)).toEqual([1, 2]);
  });

  it('marks new plans and changed limits, and nothing where limits stay', () => {
    const wider = withLimit(defaultLimits, 'knee-angle', 'most', 14);
    const { marks } = buildCourse(
      [
        session('2026-04-01', [measured(), measured({ side: 'left' })]),
        session('2026-04-03', [measured({ limits: wider }), measured({ side: 'left' })]),
        session('2026-04-05', [measured({ limits: wider })]),
      ],
      [{ givenAt: '2026-04-02T08:00:00.000Z' }],
    );
    expect(marks.map(markSentence)).toEqual([
      'Thu 2 Apr 2026: a new plan',
      'Fri 3 Apr 2026: other limits for lateral step-down, right: 14° inward, 10° outward; before: 10° inward, 10° outward',
    ]);
  });

  it('takes the most pain of a session’s sets, and leaves out records of why nothing was done', () => {
    const silence = { reason: 'away' as const, since: '2026-04-01T08:00:00.000Z' };
    const set = listedRecording({ line: { painDuring: 5 } });
    const { feelings } = buildCourse(
      [session('2026-04-03', [measured(), set]), session('2026-04-04', [], { silence })],
      [],
    );
    expect(feelings).toMatchObject([{ during: 5, after: 1, nextDay: null, effort: 6 }]);
  });

  it('takes the pain of the day after from the session in which it was answered', () => {
    const first = session('2026-04-03', [measured()]);
    const answer = (worst: number | null) => ({ visitId: first.id, worst, swelling: 'same' as const });
    const { feelings } = buildCourse(
      [
        first,
        session('2026-04-04', [], { afterLast: answer(null) }),
        session('2026-04-05', [measured()], { afterLast: answer(4) }),
      ],
      [],
    );
    expect(feelings.map(({ nextDay }) => nextDay)).toEqual([4, null, null]);
  });

  it('takes what the session notes of a set before what its plan asks for', () => {
    const noted = measured();
    const conditions = { ...asked, stage: 'seat-46', support: 'hand' as const };
    const { panels } = buildCourse(
      [session('2026-04-03', [{ ...noted, line: { ...noted.line, conditions } }])],
      [],
    );
    expect(panels[0]!.tracks[0]!.sets[0]!.conditions).toMatchObject({ stage: 'seat-46', isTest: true });
  });

  it('is empty without sessions', () => {
    expect(buildCourse([], [])).toEqual({ panels: [], feelings: [], marks: [] });
  });
});

describe('layOutCourse(course, width)', () => {
  const course = buildCourse(
    [
      session('2026-04-06', [measured({ side: 'left' }), measured({ side: 'left' }), measured()]),
      session('2026-04-08', [measured({ side: 'left', peaks: [3, null, 5] }), measured()]),
    ],
    [],
  );

  it.each([340, 800, 1200])(
    'keeps everything within %i px, sets of one day apart, left before right',
    (width) => {
      const { panels } = layOutCourse(course, width);
      const [left, right] = panels[0]!.tracks;
      const days = [left!.sets.slice(0, 2).concat(right!.sets[0]!), [left!.sets[2]!, right!.sets[1]!]];
      for (const sets of days)
        for (const [index, { x }] of sets.entries()) {
          expect(x[0]).toBeGreaterThanOrEqual(courseMargins.left);
          expect(x[1]).toBeLessThanOrEqual(width - courseMargins.right);
          if (index > 0) expect(x[0]).toBeGreaterThanOrEqual(sets[index - 1]!.x[1] - 1e-9);
        }
      for (const { points } of left!.sets)
        for (const { y, band } of points) {
          expect(band[0]).toBeLessThan(y);
          expect(band[1]).toBeGreaterThan(y);
          expect(band[1]).toBeLessThanOrEqual(panelHeights.angles);
          expect(band[0]).toBeGreaterThanOrEqual(0);
        }
    },
  );

  it('places days in proportion to time, whatever else is drawn', () => {
    const threeDays = buildCourse(
      ['2026-04-06', '2026-04-08', '2026-04-16'].map((day) => session(day, [measured()])),
      [],
    );
    const [a, b, c] = layOutCourse(threeDays, 900).feelings.map(({ x }) => x);
    // Eight days against two.
    expect((c! - b!) / (b! - a!)).toBeCloseTo(4, 9);
  });

  it('draws no line to a set without a mean, and none between unlike sets', () => {
    const { panels } = layOutCourse(course, 800);
    const [left, right] = panels[0]!.tracks;
    expect(left!.lines.map((line) => line.length)).toEqual([2]);
    expect(left!.sets[2]!.meanY).toBeNull();
    expect(left!.sets[2]!.points).toHaveLength(2);
    expect(right!.lines.map((line) => line.length)).toEqual([2]);
  });

  it('has an axis for a single day, and none of anything without sessions', () => {
    const { panels, days } = layOutCourse(buildCourse([session('2026-04-06', [measured()])], []), 800);
    expect(panels[0]!.tracks[0]!.sets[0]!.x[0]).toBeGreaterThan(courseMargins.left);
    expect(days.length).toBeGreaterThan(1);
    expect(layOutCourse(buildCourse([], []), 800).panels).toEqual([]);
  });
});

describe('the weeks that are shown', () => {
  it('begin with the first session; a plan that is older stands at the edge', () => {
    const old = [{ givenAt: '2025-01-06T08:00:00.000Z' }];
    const days = ['2026-04-06', '2026-04-20'].map((day) => session(day, [measured()]));
    const { feelings, marks } = layOutCourse(buildCourse(days, old), 900);
    expect(marks[0]!.x).toBe(courseMargins.left);
    expect(feelings[1]!.x - feelings[0]!.x).toBeGreaterThan(700);
  });

  it('are the last six, where there are more', () => {
    const days = ['2026-01-05', '2026-04-06', '2026-04-20'].map((day) => session(day, [measured()]));
    const course = buildCourse(days, []);
    const recent = lastWeeksOf(course);
    expect(recent.feelings).toHaveLength(2);
    expect(recent.panels[0]!.tracks[0]!.sets).toHaveLength(2);
    expect(lastWeeksOf(recent)).toBe(recent);
  });
});

describe('words of the course', () => {
  const [set] = buildCourse([session('2026-04-06', [measured({ peaks: [12, null, 8, 10] })])], []).panels[0]!
    .tracks[0]!.sets;

  it('give every number its error', () => {
    // 1.96 standard errors of 2.
    expect(meanWords(set!)).toBe('mean peak 10° inward ±4');
    expect(peaksWords(set!)).toBe('12° inward ±4, –, 8° inward ±4, 10° inward ±4');
    expect(meanWords({ ...set!, peak: null })).toBe('no mean: only 3 measured');
  });

  it('say what is known of the conditions, and what is not', () => {
    expect(conditionsWords(set!.conditions)).toBe('seat 46 cm, shoes, told nothing, easy bends filmed');
    const unknown = { seatHeightCm: null, footwear: null, feedback: null, bendsFilmed: false };
    expect(conditionsWords({ ...set!.conditions, ...unknown })).toBe(
      'footwear not noted, feedback not noted, no easy bends',
    );
  });
});
