/** What a practice has to know of a threshold to set it. */
export interface ThresholdFact {
  /** In force until a practice sets its own. */
  usual: number;
  /** What can be set, both ends included. */
  min: number;
  max: number;
  isWhole: boolean;
  meaning: string;
  source: string;
}

const ourChoice = 'our choice, no source';
const pain = { min: 0, max: 10, isWhole: false } as const;
const share = { min: 0, max: 1, isWhole: false } as const;

/**
 * Where the rules of `propose` draw their lines; pain is 0 to 10, shares 0 to 1.
 *
 * One step of pain is never a reason by itself: the least change that can be detected is 1.33 (numeric scale, knee
 * osteoarthritis, n = 121, J Pain Res 2018, PMC5927184).
 */
export const thresholdFacts = {
  strongPain: {
    ...pain,
    usual: 8,
    meaning: 'Pain from here on stops the exercise, whatever was agreed.',
    source:
      '8 and more is severe in chronic musculoskeletal pain, n = 2854 (Boonstra 2016, Front Psychol 7:1466)',
  },
  aboveUsual: {
    ...pain,
    usual: 2,
    meaning: 'Pain may be above the usual pain by this much during a session.',
    source: ourChoice,
  },
  nextDayRise: {
    ...pain,
    usual: 3,
    meaning: 'A rise from before a session to the next day that asks for a day of rest and the same again.',
    source:
      'whole steps beyond the least detectable change of 2.8 on a line of 10 cm (before a knee replacement, n = 75, ' +
      'BMC Musculoskelet Disord 2014, 15:235). Rest and repeat: soreness guideline after Adams 2012 (PMC6044585, ' +
      'table 5), which is stricter and asks for it after any soreness of the next day',
  },
  cautionNextDayRise: {
    ...pain,
    usual: 2,
    meaning: 'A rise from before a session to the next day with which nothing is added.',
    source:
      'whole steps beyond the least detectable change of 1.33 (numeric scale, knee osteoarthritis, n = 121, ' +
      'PMC5927184), and beyond the least important one of 1.16 (patellofemoral pain, n = 60, Piva 2009, J Rehabil ' +
      'Med 41(3); found for pain that eased)',
  },
  cautionRiseDuring: {
    ...pain,
    usual: 3,
    meaning: 'A rise during a session, within the limit, with which nothing is added.',
    source:
      'whole steps beyond the least detectable change of 2.8 (BMC Musculoskelet Disord 2014, 15:235, as for the next day)',
  },
  leastDoneShare: {
    ...share,
    usual: 0.9,
    meaning: 'With less of the plan done than this, nothing is added.',
    source: ourChoice,
  },
  sessions: {
    usual: 3,
    min: 1,
    max: 20,
    isWhole: true,
    meaning: 'Sessions that are looked at before anything is added.',
    source: ourChoice,
  },
  leastDays: {
    usual: 4,
    min: 0,
    max: 60,
    isWhole: true,
    meaning: 'Days from the first of these sessions to the last, at least.',
    source: ourChoice,
  },
  leastMeasuredShare: {
    ...share,
    usual: 2 / 3,
    meaning: 'With fewer repetitions measured than this, the quality of a session is not judged.',
    source: ourChoice,
  },
  leastExpectedShare: {
    ...share,
    usual: 0.8,
    meaning: 'Quality is good from this expected share in line on.',
    source: ourChoice,
  },
  leastLowerTenthShare: {
    ...share,
    usual: 0.6,
    meaning: 'Quality is good from this share in line on, reached with a chance of 9 in 10.',
    source: ourChoice,
  },
  goodSessions: {
    usual: 2,
    min: 1,
    max: 20,
    isWhole: true,
    meaning: 'Sessions of good quality that are needed, of those looked at; the last is one of them.',
    source: ourChoice,
  },
  mostEffort: {
    ...pain,
    usual: 8,
    meaning: 'With more effort than this, 0 to 10, nothing is added.',
    source: ourChoice,
  },
  addedRepetitions: {
    usual: 2,
    min: 1,
    max: 20,
    isWhole: true,
    meaning: 'Repetitions that are added at once.',
    source: ourChoice,
  },
} as const satisfies Record<string, ThresholdFact>;

export type ThresholdId = keyof typeof thresholdFacts;
/** A practice may set each of them. */
export type ProposalThresholds = Record<ThresholdId, number>;

export const thresholdIds = Object.keys(thresholdFacts) as ThresholdId[];

/** Those in force until a practice sets its own. */
export const usualThresholds = Object.fromEntries(
  thresholdIds.map((id) => [id, thresholdFacts[id].usual]),
) as ProposalThresholds;

/** Those that were set for a patient. */
export type OwnThresholds = Partial<ProposalThresholds>;

/** In whatever order they were set. */
export function areSameThresholds(one: OwnThresholds, other: OwnThresholds): boolean {
  return thresholdIds.every((id) => one[id] === other[id]);
}

/** Those in force for a patient: as usual, where nothing else was set. */
export function thresholdsOf(own: OwnThresholds): ProposalThresholds {
  return { ...usualThresholds, ...own };
}
