import { deviation, mean } from 'd3-array';
import { z } from 'zod';
import { ownError, repeatKinds } from '#core/reliability/ownError';
import { blandAltman } from '#core/statistics/blandAltman';
import { intraclassCorrelation } from '#core/statistics/intraclassCorrelation';
import { kappa } from '#core/statistics/kappa';
import {
  agreementSentence,
  iccSentence,
  kappaSentence,
  ownErrorSentences,
} from '#words/reliabilitySentences';
import { repeatSchema } from './changeKinds';
import { comparisonKind } from './comparisonKind';

export const reliabilityKinds = {
  'own-error': comparisonKind(
    'repeats: [{first, second}] of a knee angle, when: same-day or other-day',
    z.strictObject({
      kind: z.literal('own-error'),
      when: z.enum(repeatKinds),
      repeats: z.array(repeatSchema),
    }),
    ({ when, repeats }) => {
      const error = ownError(repeats);
      return { ...error, sentences: ownErrorSentences(error, when) };
    },
  ),
  raters: comparisonKind(
    'table: counts, a row for each class of the first rating, a column for each of the second',
    z.strictObject({ kind: z.literal('raters'), table: z.array(z.array(z.int().min(0))).min(2) }),
    ({ table }) => {
      const found = kappa(table);
      return { ...found, sentences: [kappaSentence(found)] };
    },
  ),
  methods: comparisonKind(
    'first and second: the same things, measured in two ways',
    z.strictObject({
      kind: z.literal('methods'),
      first: z.array(z.number()),
      second: z.array(z.number()),
    }),
    ({ first, second }) => {
      const found = blandAltman(first, second);
      return { ...found, sentences: [agreementSentence(found)] };
    },
  ),
  icc: comparisonKind(
    'ratings: a row for each person, a column for each day or rater',
    z.strictObject({ kind: z.literal('icc'), ratings: z.array(z.array(z.number())).min(2) }),
    ({ ratings }) => {
      const found = intraclassCorrelation(ratings);
      const sdBetween = deviation(ratings, (row) => mean(row))!;
      return { ...found, sdBetween, sentences: [iccSentence(found, sdBetween)] };
    },
  ),
};
