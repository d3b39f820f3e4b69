import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { recordingSchema } from '#documents/recording/recordingDocument';
import { bringUpRecording } from '#documents/recording/bringUpRecording';
import { isFields } from '#documents/schema/isFields';
import { CommandProblem } from './commandProblem';
import type { ObservedRecording } from './remeasureRecording';

/** What a session document observed; its derived part may be of any older make, since it is not read. */
const { id, createdAt, note, setup, limits, video, observed, corrections, review } = recordingSchema.shape;
const observedSchema = z.object({ id, createdAt, note, setup, limits, video, observed, corrections, review });

/** @throws CommandProblem  where the file holds nothing that can be measured again */
export function readObserved(path: string): ObservedRecording {
  let data: unknown;
  try {
    data = JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    throw new CommandProblem(`"${path}" is not JSON. Give a session document.`);
  }
  const result = observedSchema.safeParse(
    isFields(data) ? bringUpRecording(data, Number(data['version'])) : data,
  );
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw new CommandProblem(
    `"${path}" is not a session document that can be measured again (${issue?.path.join('.')}: ${issue?.message}).`,
  );
}
