import { z } from 'zod';
import { sessionEvents, swellingRules, swellings, type StageCourse } from '#core/programme/stageCourse';
import { readShaped } from './readShaped';

const score = z.number().min(0).max(10);
const share = z.number().min(0).max(1);
const repetitions = z.int().min(1).max(1000);

const sessionSchema = z.strictObject({
  day: z.int(),
  painBefore: score,
  painDuring: score,
  worstNextDay: score.nullable(),
  swelling: z.enum(swellings),
  event: z.enum(sessionEvents).nullable(),
  doneShare: share,
  measuredShare: share,
  expectedShare: share,
  lowerTenthShare: share,
  driftInward: z.boolean(),
  effort: score,
  repetitions,
});

const courseSchema = z.strictObject({
  limit: score,
  usualPain: score,
  swellingRule: z.enum(swellingRules),
  upTo: z
    .strictObject({ min: repetitions, max: repetitions })
    .refine(({ min, max }) => min <= max, { path: ['max'], error: 'max is at least min' }),
  sessions: z.array(sessionSchema).check(({ value, issues }) => {
    const at = value.findIndex(({ day }, i) => i > 0 && day < value[i - 1]!.day);
    if (at < 0) return;
    const message = `day ${value[at]!.day} comes after day ${value[at - 1]!.day}; the oldest session is the first`;
    issues.push({ code: 'custom', path: [at, 'day'], message, input: value[at]!.day });
  }),
});

/**
 * What was agreed for an item and how its sessions went, oldest first.
 *
 * @throws CommandProblem  where the file does not hold that, or holds anything else as well
 */
export function readCourse(path: string): StageCourse {
  return readShaped(path, courseSchema, 'the sessions of an item');
}
