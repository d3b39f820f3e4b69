import { describe, expect, it } from 'vitest';
import { eyeAgreement } from '#core/reliability/eyeAgreement';
import { ownError, repeatAgreement } from '#core/reliability/ownError';
import type { Verdict } from '#core/scoring/verdict';
import { blandAltman } from '#core/statistics/blandAltman';
import { intraclassCorrelation } from '#core/statistics/intraclassCorrelation';
import { kappa } from '#core/statistics/kappa';
import {
  agreementSentence,
  eyeSentences,
  iccSentence,
  kappaSentence,
  ownErrorSentences,
  repeatSentences,
} from '#words/reliabilitySentences';

const five = [
  { first: 9.1, second: 10.4 },
  { first: 7.8, second: 6.9 },
  { first: 11.2, second: 8.7 },
  { first: 6.5, second: 8.0 },
  { first: 10.0, second: 9.2 },
];

describe('ownErrorSentences(error, kind)', () => {
  it.each([
    [
      ownErrorSentences(ownError(five), 'other-day'),
      [
        'Own error, from 5 repeats on another day: 1.1° (0.7 to 2.6).',
        'Used, drawn towards the published error: 2.5°.',
      ],
    ],
    [
      ownErrorSentences(ownError(five.slice(0, 1)), 'other-day'),
      [
        // |d| = 1.3: 1.3 / sqrt 2 = .919; sqrt(1 / 5.0239) and sqrt(1 / .00098207) times it.
        'Own error, from 1 repeat on another day: 0.9° (0.4 to 29.3).',
        'Below 5 repeats the published error is used: 3°.',
      ],
    ],
    [
      ownErrorSentences(ownError(five), 'same-day'),
      [
        'Own error, from 5 repeats on the same day: 1.1° (0.7 to 2.6).',
        'It lacks what differs between days, so it is not used for a change over days.',
      ],
    ],
    [
      ownErrorSentences(ownError([]), 'other-day'),
      ['No set was filmed again yet. The published error is used: 3°.'],
    ],
  ])('%j', (sentences, expected) => {
    expect(sentences).toEqual(expected);
  });
});

describe('sentences of agreement', () => {
  it('have the figures of kappa', () => {
    const table = [
      [8, 2, 0],
      [1, 5, 1],
      [0, 1, 2],
    ];
    // SE sqrt(.75 x .25 / 20) / .6125 = .1581; .5918 -+ .3099.
    expect(kappaSentence(kappa(table))).toBe(
      'Rated alike: 75 % of 20; by chance it would be 39 %. Kappa 0.59 (0.28 to 0.90); weighted by distance 0.67, ' +
        'by its square 0.76.',
    );
    expect(kappaSentence(null)).toBe(
      'One class was used throughout, so agreement beyond chance cannot be told.',
    );
  });

  it('have the limits of agreement', () => {
    // Differences -1, 1, -1, 1: mean 0, SD 1.1547; t 3.182: 0 -+ 3.182 x .577; 2.263 -+ 3.182 x 1.0895.
    expect(agreementSentence(blandAltman([1, 4, 6, 8], [2, 3, 7, 7]))).toBe(
      'First less second, 4 pairs: 0 on average (−1.8 to 1.8); 95 % of differences lie between −2.3 (−5.7 to 1.2) ' +
        'and 2.3 (−1.2 to 5.7).',
    );
    expect(agreementSentence(null)).toBe('Limits of agreement take two pairs at least.');
  });

  it('have the ICC with how much people differ', () => {
    const table = [
      [4, 4],
      [8, 8],
    ];
    expect(iccSentence(intraclassCorrelation(table), 2.83)).toBe(
      'ICC(2,1): 1.00, among people who differ by a standard deviation of 2.8.',
    );
    const none = { oneWay: null, agreement: null, consistency: null };
    const without = { ...none, agreementInterval: null, consistencyInterval: null };
    expect(iccSentence(without, 0)).toBe(
      'ICC(2,1): cannot be told, among people who differ by a standard deviation of 0.',
    );
  });

  it('of repeats say which is taken from which, in degrees', () => {
    expect(repeatSentences(repeatAgreement(five))).toEqual([
      // Differences 1.3, -.9, -2.5, 1.5, -.8: mean -.28, SD 1.677; t 2.776.
      'Second less first, 5 pairs: −0.3° on average (−2.4° to 1.8°); 95 % of differences lie between −3.6° ' +
        '(−7.4° to 0.3°) and 3° (−0.8° to 6.8°).',
      expect.stringMatching(
        /^ICC\(2,1\): 0\.\d\d \(.+ to .+\), among sets that differ by a standard deviation of 1\.\d°\.$/,
      ),
    ]);
    expect(repeatSentences(null)).toEqual(['Limits of agreement are shown from 5 repeats on.']);
  });
});

describe('eyeSentences(agreement)', () => {
  const judged = (count: number, eye: 'in' | 'out', measured: Verdict) =>
    Array.from({ length: count }, () => ({ eye, measured }));

  it('have the counts, what is left out, and kappa with its interval', () => {
    // Chance (7 x 6 + 5 x 6) / 144 = .5; 11 / 12 = .9167: kappa .8333, SE sqrt(.9167 x .0833 / 12) / .5 = .1596.
    const some = [...judged(6, 'in', 'in'), ...judged(5, 'out', 'out'), ...judged(1, 'in', 'out')];
    expect(eyeSentences(eyeAgreement([...some, ...judged(1, 'out', 'cant-tell')]))).toEqual([
      'In line both ways 6, out of line both ways 5; out of line by eye alone 0, by measuring alone 1.',
      'Of 1 more, measuring names no side; it is not counted.',
      'Rated alike: 92 % of 12; by chance it would be 50 %. Kappa 0.83 (0.52 to 1.00).',
    ]);
  });

  it('say that they are too few, or all of one class', () => {
    expect(eyeSentences(eyeAgreement(judged(3, 'in', 'in'))).at(-1)).toBe(
      'Kappa takes 10 repetitions at least; these are too few.',
    );
    expect(eyeSentences(eyeAgreement(judged(30, 'in', 'in'))).at(-1)).toBe(
      'One class was used throughout, so agreement beyond chance cannot be told.',
    );
  });
});
