import { taskIds } from '#core/exercises/exercises';
import { filmBounds } from '#core/keypoints/filmBounds';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { poseModels } from '#core/keypoints/poseModel';
import { missingReasons } from '#core/measurement/curve';
import { limitEnds } from '#core/measures/limitEnd';
import { mapAlwaysLimited, mapMeasures, mapSavedCurves, measureIds } from '#core/measures/measures';
import { bodyHeightRangeCm } from '#core/protocol/bodyHeight';
import { sides } from '#core/protocol/side';
import { verdicts } from '#core/scoring/verdict';
import { viewCueNames } from '#core/view/viewCue';
import { limitsSchema } from '../schema/limitsSchema';
import { numberArray } from '../schema/numberArray';
import { z } from '../schema/zod';
import { correctionSchema, longestReason, mostCorrections } from './correctionSchema';
import { reviewSchema } from './reviewSchema';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const recordingVersion = 11;

export const mostFrames = filmBounds.frames;
export const mostRepetitions = 10_000;
/** Tracks hold points in 32 bits; larger values would become infinite there. */
const largestCoordinatePx = 3.4e38;

/** No measure in any unit comes near it; a value beyond it means that the document is damaged. */
const largestMeasured = 1e9;

const finite = z.number();
const measured = finite.min(-largestMeasured).max(largestMeasured);
const longestMs = 24 * 3_600_000;
const timeMs = finite.min(0).max(longestMs);
const maybeTimeMs = timeMs.nullable();
const reason = z.enum(missingReasons).exclude(['none']);
const perPoint = numberArray({
  min: -largestCoordinatePx,
  max: largestCoordinatePx,
  most: mostFrames * keypointCount,
});

const extreme = z
  .strictObject({
    value: measured,
    sample: z.int().min(0),
    timeMs,
    band: measured.min(0).describe('Half-width of the error band round the value, same unit.'),
    ownBand: measured
      .min(0)
      .optional()
      .describe('The part of it that this repetition does not share with its set: band² = shared² + own².'),
    isAtEdge: z
      .boolean()
      .optional()
      .describe(
        'Whether it stands at the edge of what was seen. Like ownBand left out where it is not known.',
      ),
  })
  .nullable()
  .describe('A value and where it stands on the time base; null where none was measured.');

const chanceInLine = finite.min(0).max(1).nullable();

const range = z.strictObject({
  min: extreme,
  max: extreme,
  measuredShare: finite.min(0).max(1).describe('Share of the loaded time in which it could be measured.'),
  mainReason: reason.nullable().describe('The reason behind most of what is missing; null where nothing is.'),
});

const curve = z.strictObject({
  values: z
    .array(measured.nullable())
    .max(mostFrames * 2)
    .describe('One a sample; null where missing.'),
  missing: z
    .array(z.strictObject({ from: z.int().min(0), to: z.int().min(0), reason }))
    .describe('Runs of samples without a value (both ends included), with the reason.'),
});

const yawDeg = finite.min(-180).max(180);
const bends = z
  .strictObject({
    yawDeg,
    sdDeg: measured.min(0),
    footDeg: z
      .strictObject({ left: yawDeg.nullable(), right: yawDeg.nullable() })
      .describe('How each foot pointed in the picture; null where unseen.'),
  })
  .describe('How the body stood to the camera in two-legged bends before the set, camera unmoved.');

const setup = z.strictObject({
  task: z.enum(taskIds),
  side: z.enum(sides).describe("The person's own side."),
  bodyHeightCm: finite
    .min(bodyHeightRangeCm.min)
    .max(bodyHeightRangeCm.max)
    .optional()
    .describe('Turns shares of leg length into centimetres; left out where it is not known.'),
  bends: bends.optional(),
  goMs: timeMs
    .optional()
    .describe(
      "When the set was begun ('go'); what was done before is no repetition of it. Left out: from the start.",
    ),
});

const sidePx = z.int().min(filmBounds.leastPx).max(filmBounds.mostPx);
const video = z.strictObject({
  bytes: z.int().min(0),
  codec: z.string().max(100),
  widthPx: sidePx.describe('As displayed, rotation applied.'),
  heightPx: sidePx,
  durationMs: timeMs,
  frameRateHz: finite.min(0).max(1000),
});

const observed = z.strictObject({
  model: z.strictObject({
    name: z.literal('BlazePose'),
    size: z.enum(poseModels),
    weights: z
      .string()
      .max(100)
      .describe('Package and version that the weights come from, and the beginning of their SHA-256.'),
    backend: z.enum(['webgpu', 'webgl', 'wasm']),
  }),
  points: z.array(z.enum(keypointNames)).length(keypointCount).describe('Order of the points in a frame.'),
  timesMs: numberArray({ min: 0, max: longestMs, most: mostFrames }).describe(
    'Presentation time of each frame, strictly increasing.',
  ),
  xPx: perPoint.describe('Picture px as displayed, x right; frame after frame, one a point.'),
  yPx: perPoint.describe('Picture px as displayed, y down.'),
  score: numberArray({ min: 0, max: 1, most: mostFrames * keypointCount }).describe(
    "The network's confidence, 0 to 1; all 0 in a frame without a person.",
  ),
  closer: z
    .strictObject({
      network: z.literal('MoveNet Thunder'),
      frames: z.int().min(1).max(mostFrames),
      untilMs: timeMs.describe('Time of the last of them; what came later was seen once only.'),
    })
    .optional()
    .describe('Frames whose legs a second network saw as well, both also in their mirror image.'),
});

const repetition = z.strictObject({
  number: z.int().min(1),
  excluded: z
    .string()
    .min(1)
    .max(longestReason)
    .optional()
    .describe('Why it does not count, as a correction says; left out where it counts.'),
  completeness: z.enum(['complete', 'partial', 'cut-at-start', 'cut-at-end']),
  events: z.strictObject({
    startMs: timeMs,
    seatOffMs: maybeTimeMs,
    topMs: maybeTimeMs,
    topEndMs: maybeTimeMs,
    bottomMs: maybeTimeMs,
    seatContactMs: maybeTimeMs,
    endMs: timeMs,
  }),
  loadedFrom: z.int().min(0),
  loadedTo: z.int().min(0),
  ranges: z
    .strictObject({
      ...mapMeasures(() => range.partial().optional()),
      ...mapAlwaysLimited(() => range),
    })
    .describe(
      'How far each measure went while loaded, in its own unit and sign; see docs/measurement.md. What an older ' +
        'version did not keep is left out.',
    ),
  judgement: z.strictObject({
    verdict: z.enum(verdicts).describe('What can be said with a chance of 80 % at least.'),
    chanceInLine: chanceInLine.describe('Of the measure that the verdict rests on.'),
    reason: reason.nullable(),
    decidedBy: z.enum(measureIds).describe('What the verdict rests on, or lacks.'),
    alignmentScorePct: finite
      .min(0)
      .max(100)
      .nullable()
      .describe('Share of the measured loaded time in which the knee angle was within its limits.'),
    measures: z
      .array(
        z.strictObject({
          measure: z.enum(measureIds),
          verdict: z.enum(verdicts),
          chanceInLine: chanceInLine.describe('Chance that it was within its limits.'),
          reason: reason.nullable(),
          end: z.enum(limitEnds),
          extreme,
        }),
      )
      .max(measureIds.length)
      .describe('Those that have a limit.'),
  }),
});

const view = z
  .strictObject({
    focalPx: measured.min(1).describe('Focal length that was assumed.'),
    yawDeg: measured.describe("Positive = the body's front points to the picture's right."),
    sdDeg: measured.min(0).describe('Uncertainty of the yaw, one standard deviation.'),
    rollDeg: measured.describe('Roll of the camera, taken out; positive = upright leans to the right.'),
    standingOffsetDeg: measured.describe(
      'Knee angle in quiet standing, taken off where the leg is straight.',
    ),
    cues: z
      .array(
        z.strictObject({
          name: z.enum(viewCueNames),
          yawDeg: measured,
          sdDeg: measured.min(0),
        }),
      )
      .max(10),
  })
  .describe('How the body stood to the camera, and the readings it was estimated from.');

const derived = z.strictObject({
  measuringVersion: z.int().min(1),
  rateHz: finite.min(0).max(1000),
  startMs: timeMs.describe('Time of the first sample; sample n stands at startMs + n * 1000 / rateHz.'),
  legLengthPx: measured.min(0).nullable(),
  view: view.nullable(),
  curves: z
    .strictObject(mapSavedCurves(() => curve))
    .describe('Measures over time, in the unit and sign of docs/measurement.md.'),
  repetitions: z.array(repetition).max(mostRepetitions),
  isSideDoubtful: z
    .literal(true)
    .optional()
    .describe('It looks as if the other leg worked; left out where it does not.'),
});

/** One set of one task with one leg: what was asked, what was seen, and what was derived from it, kept separate. */
export const recordingSchema = z
  .strictObject({
    format: z.literal('overfoot-session'),
    version: z.literal(recordingVersion),
    id: z.uuid(),
    createdAt: z.iso.datetime(),
    note: z.string().max(2000).describe('For demo data: that it is invented. Otherwise empty.'),
    setup,
    limits: limitsSchema,
    video,
    observed,
    corrections: z
      .array(correctionSchema)
      .max(mostCorrections)
      .optional()
      .describe('What was corrected by hand, in order; `setup` and `observed` stay as they were before.'),
    derived,
    review: reviewSchema.optional().describe('What a therapist noted in review; left out before that.'),
  })
  .meta({ title: 'Overfoot recording document' });

export type RecordingDocument = z.infer<typeof recordingSchema>;
