import { z } from 'zod';
import { adherence, outcomes, usualSilentFrom } from '#core/adherence/adherence';
import { assessmentChange } from '#core/assessments/assessmentChange';
import { assessmentIds, findAssessment } from '#core/assessments/assessments';
import { balanceReach } from '#core/assessments/balanceReach';
import { effusionGrades, swellingOf } from '#core/assessments/effusion';
import { miniSquat } from '#core/assessments/miniSquat';
import { scoreTries } from '#core/assessments/scoreTries';
import { stepDownRating } from '#core/assessments/stepDownRating';
import { adherenceSentences } from '#words/adherenceSentences';
import {
  assessmentChangeSentence,
  assessmentSentences,
  effusionSentence,
  miniSquatSentence,
  protocolSentences,
  reachSentence,
  stepDownSentence,
} from '#words/assessmentSentences';
import { comparisonKind } from './comparisonKind';

const tries = z.array(z.number().min(0));
const lengthCm = z.number().min(0).max(300);

export const recordKinds = {
  test: comparisonKind(
    `test: ${assessmentIds.join(', ')}; left and right: [try, ...], earlier?: {left, right, sameRater, sameProtocol}, ownSem?`,
    z.strictObject({
      kind: z.literal('test'),
      test: z.enum(assessmentIds),
      left: tries,
      right: tries,
      earlier: z
        .strictObject({ left: tries, right: tries, sameRater: z.boolean(), sameProtocol: z.boolean() })
        .optional(),
      ownSem: z.number().min(0).nullable().default(null),
    }),
    ({ test, left, right, earlier, ownSem }) => {
      const assessment = findAssessment(test);
      const now = { left: scoreTries(assessment, left), right: scoreTries(assessment, right) };
      const changes = (['left', 'right'] as const).flatMap((side) => {
        const [then, later] = [earlier && scoreTries(assessment, earlier[side]), now[side]];
        if (then === undefined || then === null || later === null) return [];
        const alike = { rater: earlier!.sameRater, protocol: earlier!.sameProtocol };
        const change = assessmentChange(assessment, then, later, alike, ownSem);
        return [{ side, ...change, sentence: assessmentChangeSentence(assessment, change) }];
      });
      return {
        ...now,
        changes,
        protocol: protocolSentences(assessment),
        sentences: [
          ...assessmentSentences(assessment, now),
          ...changes.map(({ side, sentence }) => `${side === 'left' ? 'Left' : 'Right'}: ${sentence}`),
        ],
      };
    },
  ),
  'step-down': comparisonKind(
    'seen: {armsUsed, trunkLeaned, pelvisLeftLevel, kneeInward, unsteady}',
    z.strictObject({
      kind: z.literal('step-down'),
      seen: z.strictObject({
        armsUsed: z.boolean(),
        trunkLeaned: z.boolean(),
        pelvisLeftLevel: z.boolean(),
        kneeInward: z.enum(['none', 'beyond-second-toe', 'beyond-inner-border']),
        unsteady: z.boolean(),
      }),
    }),
    ({ seen }) => {
      const rating = stepDownRating(seen);
      return { ...rating, sentences: [stepDownSentence(rating)] };
    },
  ),
  reach: comparisonKind(
    'legCm and reachCm: {front, backInward, backOutward}',
    z.strictObject({
      kind: z.literal('reach'),
      legCm: z.number().positive().max(200),
      reachCm: z.strictObject({ front: lengthCm, backInward: lengthCm, backOutward: lengthCm }),
    }),
    ({ reachCm, legCm }) => {
      const reach = balanceReach(reachCm, legCm);
      return { ...reach, sentences: [reachSentence(reach)] };
    },
  ),
  'mini-squat': comparisonKind(
    'isInward: five times true, false or null',
    z.strictObject({ kind: z.literal('mini-squat'), isInward: z.array(z.boolean().nullable()).length(5) }),
    ({ isInward }) => {
      const found = miniSquat(isInward);
      return { found, sentences: [miniSquatSentence(found)] };
    },
  ),
  effusion: comparisonKind(
    `earlier and later: ${effusionGrades.join(', ')}`,
    z.strictObject({
      kind: z.literal('effusion'),
      earlier: z.enum(effusionGrades),
      later: z.enum(effusionGrades),
    }),
    ({ earlier, later }) => ({
      swelling: swellingOf(earlier, later),
      sentences: [effusionSentence(earlier, later)],
    }),
  ),
  adherence: comparisonKind(
    'perWeek, startDay, today, pauses?: [{from, to}], occasions: [{day, outcome}], silentFrom?',
    z.strictObject({
      kind: z.literal('adherence'),
      perWeek: z.number().min(1).max(14),
      startDay: z.int(),
      today: z.int(),
      pauses: z.array(z.strictObject({ from: z.int(), to: z.int().nullable() })).default([]),
      occasions: z.array(z.strictObject({ day: z.int(), outcome: z.enum(outcomes) })),
      silentFrom: z.int().min(1).default(usualSilentFrom),
    }),
    ({ occasions, silentFrom, ...period }) => {
      const found = adherence(occasions, period, silentFrom);
      return { ...found, sentences: adherenceSentences(found) };
    },
  ),
};
