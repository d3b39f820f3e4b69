import { recordingSchema } from '#documents/recording/recordingDocument';
import { limitsSetSchema } from '#documents/recording/reviewSchema';
import { bringUpLimits } from '#documents/schema/bringUpLimits';
import { limitsSchema } from '#documents/schema/limitsSchema';
import { z } from '#documents/schema/zod';
import { sessionSetSchema } from '#documents/session/sessionDocument';

const { setup, note, video, observed } = recordingSchema.shape;
/** Rows of older versions hold limits of an older make. */
const keptLimits = z.preprocess(bringUpLimits, limitsSchema);
const videoText = z.string().max(100).nullable();

/**
 * Whether a recording's joints come from its stored video: they still have to be tracked ('waiting'), they do
 * ('done'), the person cancelled it ('declined'), or there is no readable video of all of it ('impossible').
 */
export const fromVideoStates = ['waiting', 'done', 'declined', 'impossible'] as const;
export type FromVideo = (typeof fromVideoStates)[number];

/** What is kept next to a recording document, small enough to list them all. */
export const recordingFactsSchema = z.strictObject({
  id: z.uuid(),
  createdAt: z.iso.datetime(),
  task: setup.shape.task,
  /** The leg that worked: as corrected, where somebody did. */
  side: setup.shape.side,
  visitId: z.uuid().nullable(),
  /** File name among the videos; null where none was kept. */
  video: videoText,
  fromVideo: z.enum(fromVideoStates),
  /** The limits that a review set last for later sets too; null where none did. */
  limitsSet: limitsSetSchema.extend({ limits: keptLimits }).nullable().default(null),
});
export type RecordingFacts = z.infer<typeof recordingFactsSchema>;

/** What is known of a set when its recording starts. */
export const setStartSchema = z.strictObject({
  /** Becomes the id of its recording. */
  id: z.uuid(),
  startedAt: z.iso.datetime(),
  visitId: z.uuid().nullable(),
  /** Its line in the session, as far as it is known; null for a recording without a session. */
  visitSet: sessionSetSchema
    .extend({ conditions: sessionSetSchema.shape.conditions.default(null) })
    .nullable(),
  setup,
  limits: keptLimits,
  note,
  /** Size of the picture that the rows' px refer to. */
  widthPx: video.shape.widthPx,
  heightPx: video.shape.heightPx,
  model: observed.shape.model,
  /** Type that the recorder writes; null where no video is kept. */
  videoType: videoText,
});
export type SetStart = z.infer<typeof setStartSchema>;

/** The network with which a video is tracked; rows from another one cannot be resumed. */
export const trackingModelSchema = observed.shape.model;
export type TrackingModel = z.infer<typeof trackingModelSchema>;

export const planRecordSchema = z.strictObject({
  id: z.string().min(1).max(100),
  savedAt: z.iso.datetime(),
  text: z.string().max(1_000_000),
});
export type PlanRecord = z.infer<typeof planRecordSchema>;
