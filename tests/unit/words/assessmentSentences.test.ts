import { describe, expect, it } from 'vitest';
import { assessmentChange } from '#core/assessments/assessmentChange';
import { findAssessment } from '#core/assessments/assessments';
import type { RiseCount } from '#core/assessments/countRises';
import {
  assessmentChangeSentence,
  assessmentSentences,
  bendCountSentences,
  classedResult,
  protocolSentences,
  resultWords,
  riseCountSentences,
  stepDownSeenWords,
} from '#words/assessmentSentences';

describe('resultWords(assessment, value)', () => {
  it.each([
    [resultWords(findAssessment('one-leg-rise'), 18), '18 repetitions'],
    [resultWords(findAssessment('one-leg-rise'), 1), '1 repetition'],
    [resultWords(findAssessment('one-leg-rise'), 50), '50 repetitions, where the test ends'],
    [resultWords(findAssessment('effusion'), 2), '1+'],
    [resultWords(findAssessment('effusion'), 0), '0'],
    [resultWords(findAssessment('step-down-quality'), 6), '6 points'],
    [resultWords(findAssessment('strength'), 2.35), '2.4 N/kg'],
  ])('%s', (words, expected) => {
    expect(words).toBe(expected);
  });
});

describe('classedResult(assessment, value)', () => {
  it.each([
    // 0 to 1 good, 2 to 3 medium, 4 and more poor (Piva 2006); inward from 3 of 5 on (Ageberg 2010).
    [classedResult(findAssessment('step-down-quality'), 1), '1 point of 6, good'],
    [classedResult(findAssessment('step-down-quality'), 3), '3 points of 6, medium'],
    [classedResult(findAssessment('step-down-quality'), 6), '6 points of 6, poor'],
    [classedResult(findAssessment('mini-squat'), 2), 'inward in 2 of 5 bends, knee over the foot'],
    [classedResult(findAssessment('mini-squat'), 5), 'inward in 5 of 5 bends, knee inward of the foot'],
    [classedResult(findAssessment('wall-sit'), 40), '40 s'],
  ])('%s', (words, expected) => {
    expect(words).toBe(expected);
  });
});

describe('stepDownSeenWords(seen)', () => {
  const nothing = {
    ...{ armsUsed: false, trunkLeaned: false, pelvisLeftLevel: false, unsteady: false },
    kneeInward: 'none' as const,
  };
  it('names what was seen in the order of the list', () => {
    expect(stepDownSeenWords(nothing)).toBe('nothing of the list');
    expect(
      stepDownSeenWords({ ...nothing, trunkLeaned: true, kneeInward: 'beyond-second-toe', unsteady: true }),
    ).toBe('the trunk leaned, knee beyond the second toe, unsteady');
  });
});

describe('bendCountSentences(count)', () => {
  const bends = (isInward: (boolean | null)[]) =>
    isInward.map((one, index) => ({ startMs: 4000 * index, isInward: one, bendDeg: 48 + index }));
  it('says when the knee went inward, and how far it bent', () => {
    const [count, deg] = bendCountSentences({
      ...{ kind: 'counted', bends: bends([true, false, true, false, false]) },
      ...{ inward: 2, found: 'over', more: 0 },
    });
    expect(count).toMatch(/^Inward of the foot in 2 of 5 bends: at .+, .+\.$/);
    expect(deg).toBe('The knee bent to about 48° to 52°; as published it is about 50°.');
    const [, alike] = bendCountSentences({
      ...{ kind: 'counted', bends: bends([true, false]).map((one) => ({ ...one, bendDeg: 50.2 })) },
      ...{ inward: 1, found: 'over', more: 0 },
    });
    expect(alike).toBe('The knee bent to about 50°; as published it is about 50°.');
  });

  it('gives no number where some can’t be told, and the class where they can’t change it', () => {
    const told = bendCountSentences({
      ...{ kind: 'counted', bends: bends([true, true, true, null, false]) },
      ...{ inward: null, found: 'inward', more: 1 },
    });
    expect(told[0]).toMatch(
      /^Inward of the foot in 3 of 5 bends; can’t tell of those at .+ enter the number/,
    );
    expect(told).toContain('Whichever way those are, it counts as knee inward of the foot.');
    expect(told).toContain('Bends after the fifth do not count: 1.');
  });

  it('says why nothing is counted', () => {
    expect(bendCountSentences({ kind: 'too-few-bends', bends: 4 })).toEqual([
      'Not counted: only 4 of 5 bends are complete. Enter it by hand.',
    ]);
    expect(bendCountSentences({ kind: 'other-leg' })[0]).toMatch(/^Not counted: .*other leg/);
  });
});

describe('protocolSentences(assessment)', () => {
  it('says how it is done and what ends it', () => {
    expect(protocolSentences(findAssessment('one-leg-rise'))).toEqual([
      'Write down: height of the seat; pace, if one was set.',
      'The uninvolved leg comes first, without feedback.',
      'Sit with the arms crossed and one foot off the floor.',
      'Stand up on the other leg and sit down again, touching the seat lightly, as often as you can.',
      'Each leg: 2 to practise, then 1 that counts. Rest between tries and legs: 180 s.',
      'It ends with: pain above the agreed limit; the knee gives way or locks; dizziness; the person wants to stop; ' +
        'standing up fails; the other foot touches the floor twice; 50 times.',
    ]);
    expect(protocolSentences(findAssessment('knee-to-wall'))).toContain(
      'Each leg: 1 to practise, then 3 that count; the best of them counts. Rest between tries and legs: 10 s.',
    );
    expect(protocolSentences(findAssessment('effusion'))).toContain('Each leg: 1 that counts.');
  });
});

describe('assessmentSentences(assessment, results)', () => {
  it('gives the figures, what others found and what is not told', () => {
    expect(assessmentSentences(findAssessment('one-leg-rise'), { left: 24, right: null })).toEqual([
      'One-leg rise, to the end: left 24 repetitions; right not done.',
      'Published for 33 people of about 47 years without knee complaints: median 32, ended at 50 ' +
        '(BMC Musculoskelet Disord 2019, 20:476).',
      'Published for people 23 years after an injured cruciate ligament, without an operation: median 15; 59 % with ' +
        '20 or fewer (BMC Musculoskelet Disord 2019, 20:476).',
      'It is no measure of strength: the two share half of their variance, less at high counts (West 2023, n = 100).',
      'It says nothing about the risk of injury.',
    ]);
  });

  it('says where no norms are known', () => {
    expect(assessmentSentences(findAssessment('wall-sit'), { left: 40, right: 41 })).toContain(
      'No norms known.',
    );
  });
});

describe('assessmentChangeSentence(assessment, change)', () => {
  const said = (
    id: 'step-down-quality' | 'one-leg-rise' | 'effusion',
    [earlier, later]: [number, number],
    alike = { rater: true, protocol: true },
  ) => {
    const assessment = findAssessment(id);
    return assessmentChangeSentence(assessment, assessmentChange(assessment, earlier, later, alike));
  };

  it.each([
    [
      said('step-down-quality', [4, 2]),
      'Less than then by 2 points, beyond error: error alone can make 1 point.',
    ],
    [
      said('effusion', [1, 2]),
      'No change beyond error: a difference of 1 grade, and error alone can make 1 grade.',
    ],
    [
      said('one-leg-rise', [14, 22]),
      'A difference of 8 repetitions. No error known: film or test it twice to find your own.',
    ],
    [
      said('step-down-quality', [4, 2], { rater: false, protocol: true }),
      'Not compared: somebody else rated.',
    ],
    [
      said('step-down-quality', [4, 2], { rater: true, protocol: false }),
      'Not compared: one of these was different: height of the step, 20 cm as published; who rated.',
    ],
  ])('%s', (sentence, expected) => {
    expect(sentence).toBe(expected);
  });
});

describe('riseCountSentences(test, count)', () => {
  const span = { fromMs: 4000, toMs: 72_500 };

  it('give the result, what was left out, and what is for the eye', () => {
    const count = { kind: 'counted' as const, value: 18, from: span, notCounted: [], unseenOutside: null };
    expect(riseCountSentences('one-leg-rise', count)).toEqual([
      '18 repetitions, from 4.0 s to 1:12.5 of the recording.',
      expect.stringMatching(/^The camera does not tell whether the other foot touched the floor/),
    ]);
    expect(riseCountSentences('rise-five-times', { ...count, value: 14.3 }).slice(0, 2)).toEqual([
      '14.3 s, from 4.0 s to 1:12.5 of the recording.',
      'Start and end are each found to about 0.2 s, as rendered clips with known times show.',
    ]);
    const less = { ...count, notCounted: [50_000], unseenOutside: { fromMs: 73_000, toMs: 75_000 } };
    expect(riseCountSentences('one-leg-rise', less).slice(1, 3)).toEqual([
      'Not counted, since they did not come to standing or do not count by a correction: those at 50.0 s. Look ' +
        'whether that is right.',
      'The hips are out of sight from 1:13.0 to 1:15.0: look whether more rises were made there.',
    ]);
  });

  it.each<[RiseCount, string]>([
    [{ kind: 'none-complete' }, 'no complete rise was found.'],
    [{ kind: 'other-leg' }, 'it looks as if the other leg worked.'],
    [{ kind: 'not-seen', span }, 'the hips are out of sight from 4.0 s to 1:12.5.'],
    [{ kind: 'cut-at-start' }, 'the recording begins during a rise.'],
    [{ kind: 'cut-at-end' }, 'the recording ends during a rise.'],
    [{ kind: 'too-short', seconds: 24 }, 'the recording ends 24 s after the start, and 30 s count.'],
    [{ kind: 'too-few', rises: 4 }, 'only 4 of 5 rises are complete.'],
  ])('say why there is none: %j', (count, why) => {
    expect(riseCountSentences('rise-30-s', count)).toEqual([`Not counted: ${why} Enter it by hand.`]);
  });
});
