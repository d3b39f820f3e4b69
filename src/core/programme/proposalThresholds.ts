/**
 * Where the rules of `propose` draw their lines. A practice may set each of them; pain is 0 to 10, shares 0 to 1.
 *
 * One step of pain is never a reason by itself: the least change that can be detected is 1.33 (numeric scale, knee
 * osteoarthritis, n = 121, J Pain Res 2018, PMC5927184).
 */
export interface ProposalThresholds {
  /**
   * Pain from here on stops the exercise, whatever was agreed.
   * Source: 8 and more is severe in chronic musculoskeletal pain, n = 2854 (Boonstra 2016, Front Psychol 7:1466)
   */
  strongPain: number;
  /**
   * Pain may exceed the usual one by as much during a session.
   * Source: our choice, no source
   */
  aboveUsual: number;
  /**
   * A rise from before a session to the next day that asks for a day of rest and the same again.
   * Source: whole steps beyond the least detectable change of 2.8 on a line of 10 cm (before a knee replacement,
   * n = 75, BMC Musculoskelet Disord 2014, 15:235). Rest and repeat: soreness guideline after Adams 2012 (PMC6044585,
   * table 5), which is stricter and asks for it after any soreness of the next day
   */
  nextDayRise: number;
  /**
   * A rise from before a session to the next day with which nothing is added.
   * Source: whole steps beyond the least detectable change above, and beyond the least important one of 1.16
   * (patellofemoral pain, n = 60, Piva 2009, J Rehabil Med 41(3); found for pain that eased)
   */
  cautionNextDayRise: number;
  /**
   * A rise during a session, within the limit, with which nothing is added.
   * Source: whole steps beyond the 2.8 of `nextDayRise`
   */
  cautionRiseDuring: number;
  /**
   * Less of what was planned than this, and nothing is added.
   * Source: our choice, no source
   */
  leastDoneShare: number;
  /**
   * Sessions that are looked at before anything is added.
   * Source: our choice, no source
   */
  sessions: number;
  /**
   * Days from the first of these sessions to the last, at least.
   * Source: our choice, no source
   */
  leastDays: number;
  /**
   * Of fewer measured repetitions than this, the quality of a session is not judged.
   * Source: our choice, no source
   */
  leastMeasuredShare: number;
  /**
   * Quality is good from this expected share in line on.
   * Source: our choice, no source
   */
  leastExpectedShare: number;
  /**
   * Quality is good from this lower tenth of the share in line on.
   * Source: our choice, no source
   */
  leastLowerTenthShare: number;
  /**
   * Sessions of good quality that are needed, of those looked at; the last is one of them.
   * Source: our choice, no source
   */
  goodSessions: number;
  /**
   * More effort than this, 0 to 10, and nothing is added.
   * Source: our choice, no source
   */
  mostEffort: number;
  /**
   * Repetitions that are added at once.
   * Source: our choice, no source
   */
  addedRepetitions: number;
}

/** Those in force until a practice sets its own. */
export const usualThresholds: ProposalThresholds = {
  strongPain: 8,
  aboveUsual: 2,
  nextDayRise: 3,
  cautionNextDayRise: 2,
  cautionRiseDuring: 3,
  leastDoneShare: 0.9,
  sessions: 3,
  leastDays: 4,
  leastMeasuredShare: 2 / 3,
  leastExpectedShare: 0.8,
  leastLowerTenthShare: 0.6,
  goodSessions: 2,
  mostEffort: 8,
  addedRepetitions: 2,
};
