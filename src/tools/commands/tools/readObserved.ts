import { z } from 'zod';
import { bringUpRecording } from '#documents/recording/bringUpRecording';
import { recordingSchema } from '#documents/recording/recordingDocument';
import { isFields } from '#documents/schema/isFields';
import { CommandProblem } from './commandProblem';
import { readJson } from './readJson';
import type { ObservedRecording } from './remeasureRecording';

/** The observed part of a recording document; its derived part may be of any older version, since it is not read. */
const { id, createdAt, note, setup, limits, video, observed, corrections, review } = recordingSchema.shape;
const observedSchema = z.object({ id, createdAt, note, setup, limits, video, observed, corrections, review });

/** @throws CommandProblem  where the file holds nothing that can be measured again */
export function readObserved(path: string): ObservedRecording {
  const data = readJson(path, 'a recording document');
  const result = observedSchema.safeParse(
    isFields(data) ? bringUpRecording(data, Number(data['version'])) : data,
  );
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw new CommandProblem(
    `"${path}" is not a recording document that can be measured again (${issue?.path.join('.')}: ${issue?.message}).`,
  );
}
