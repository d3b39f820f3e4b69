import { z } from 'zod';
import { changeOfSets, courseOfTests } from '#core/change/changeOfSets';
import { limbSymmetry, symmetryUnits, usualLinePct } from '#core/change/limbSymmetry';
import { painChange } from '#core/change/painChange';
import { placings, sideDifference } from '#core/change/sideDifference';
import { compareConditions } from '#core/conditions/compareConditions';
import { sides } from '#core/protocol/side';
import { ownError, semOfDay } from '#core/reliability/ownError';
import {
  changeSentences,
  courseSentences,
  painSentence,
  sideSentence,
  symmetrySentence,
} from '#words/changeSentences';
import { conditionSentences } from '#words/conditionSentences';
import { comparisonKind } from './comparisonKind';
import { conditionsSchema } from './conditionsSchema';

const degrees = z.number().min(-90).max(90);
const sdDeg = z.number().min(0).max(90);
export const repeatSchema = z.strictObject({ first: z.number(), second: z.number() });

const sets = z.array(z.strictObject({ day: z.int(), value: degrees, conditions: conditionsSchema })).min(1);
/** How far off a set is: the sets' own error, and repeats of other days where the practice has them. */
const error = { bandSdDeg: sdDeg.default(0), repeats: z.array(repeatSchema).default([]) };
const errorOf = ({ bandSdDeg, repeats }: { bandSdDeg: number; repeats: z.infer<typeof repeatSchema>[] }) =>
  semOfDay(ownError(repeats), bandSdDeg);

const pains = z.array(z.number().min(0).max(10)).min(1);
const leg = z.strictObject({ deg: degrees, yawSdDeg: sdDeg, otherSdDeg: sdDeg });
const amount = { value: z.number().min(0), sem: z.number().min(0).nullable() };

export const changeKinds = {
  change: comparisonKind(
    'earlier and later: [{day, value, conditions}], bandSdDeg?, repeats?: [{first, second}]',
    z.strictObject({ kind: z.literal('change'), earlier: sets, later: sets, ...error }),
    ({ earlier, later, ...errors }) => {
      const result = changeOfSets(earlier, later, errorOf(errors));
      return { ...result, sentences: changeSentences(result) };
    },
  ),
  course: comparisonKind(
    'sets: [{day, value, conditions}], bandSdDeg?, repeats?',
    z.strictObject({ kind: z.literal('course'), sets, ...error }),
    ({ sets: all, ...errors }) => {
      const course = courseOfTests(all, errorOf(errors));
      return { ...course, sentences: courseSentences(course) };
    },
  ),
  pain: comparisonKind(
    'what: such as "Worst pain of the day", earlier and later: [0 to 10, ...]',
    z.strictObject({ kind: z.literal('pain'), what: z.string().min(1), earlier: pains, later: pains }),
    ({ what, earlier, later }) => {
      const change = painChange(earlier, later);
      return { ...change, sentences: [painSentence(what, change)] };
    },
  ),
  sides: comparisonKind(
    'placing: same or own, conditions: {left, right}, days: [{left, right: {deg, yawSdDeg, otherSdDeg}}]',
    z.strictObject({
      kind: z.literal('sides'),
      placing: z.enum(placings),
      conditions: z.strictObject({ left: conditionsSchema, right: conditionsSchema }),
      days: z.array(z.strictObject({ left: leg, right: leg })).min(1),
    }),
    ({ placing, conditions, days }) => {
      const comparison = compareConditions(conditions.left, conditions.right, ['side']);
      const said = conditionSentences(comparison, '', { earlier: 'left', later: 'right' });
      if (comparison.differences.length > 0) return { ...comparison, sentences: said };
      const difference = sideDifference(days, placing);
      return { ...difference, sentences: [sideSentence(difference), ...said] };
    },
  ),
  symmetry: comparisonKind(
    `unit: ${symmetryUnits.join(', ')}; involved: {side, value, sem}, other: {value, sem, before}, linePct?`,
    z.strictObject({
      kind: z.literal('symmetry'),
      unit: z.enum(symmetryUnits, 'only amounts have a percentage: repetitions, cm, s or N/kg'),
      involved: z.strictObject({ side: z.enum(sides), ...amount }),
      other: z.strictObject({ ...amount, value: z.number().positive(), before: z.boolean() }),
      linePct: z.number().min(1).max(200).default(usualLinePct),
    }),
    ({ involved, other, linePct }) => {
      const symmetry = limbSymmetry(involved, other, linePct);
      const sentence = symmetrySentence(symmetry, { involved: involved.side, before: other.before, linePct });
      return { ...symmetry, sentences: [sentence] };
    },
  ),
};
