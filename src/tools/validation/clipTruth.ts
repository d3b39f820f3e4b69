import { z } from 'zod';
import { taskIds } from '#core/exercises/exercises';
import { sides } from '#core/protocol/side';

const seconds = z.number();
const maybeSeconds = seconds.nullable();
const legAngles = z.object({ fppaImage: z.number() });

/**
 * What is known of a rendered clip: times in seconds, angles in degrees, inward (medial) positive. Only what the
 * comparison reads is asked for; a truth file may hold more.
 */
export const clipTruthSchema = z.object({
  task: z.enum(taskIds),
  side: z.enum(sides),
  workingSide: z.enum(['L', 'R']),
  camera: z.object({ yawDeg: z.number(), rollDeg: z.number() }),
  reps: z.array(
    z.object({
      index: z.int().min(0),
      start: seconds,
      liftOff: maybeSeconds,
      bottom: maybeSeconds,
      top: maybeSeconds,
      topEnd: maybeSeconds,
      touchDown: maybeSeconds,
      end: seconds,
      measuredPeakFppaFrontal: z.number(),
      measuredPeakFppaImage: z.number(),
      /** Of the knee off the line hip to ankle, as a share of leg length. */
      peakKneeOffsetFrontal: z.number().optional(),
    }),
  ),
  perFrame: z
    .array(z.object({ t: seconds, side: z.object({ L: legAngles.optional(), R: legAngles.optional() }) }))
    .default([]),
});

export type ClipTruth = z.infer<typeof clipTruthSchema>;
export type TrueRepetition = ClipTruth['reps'][number];

/** Reads a truth file's text; null where it is none, with the reason in words. */
export function parseClipTruth(
  text: string,
): { truth: ClipTruth; problem: null } | { truth: null; problem: string } {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { truth: null, problem: 'it is not JSON' };
  }
  const result = clipTruthSchema.safeParse(data);
  if (result.success) return { truth: result.data, problem: null };
  const [issue] = result.error.issues;
  return { truth: null, problem: `${issue?.path.join('.') ?? ''}: ${issue?.message ?? 'unknown'}` };
}
