import { createRowSaver } from './createRowSaver';
import { unpackRows } from './jointRows';
import { trackingModelSchema, type TrackingModel } from './keptSchemas';
import { removingTracking, trackingOwner } from './recordingChanges';
import type { Records } from './records';
import type { Repository } from './repository';

/** Keeps the rows of a video that is tracked in pieces. */
export function createTrackingRows(records: Records): Repository['trackingRows'] {
  return async (id, model, onProblem) => {
    const owner = trackingOwner(id);
    const begun = trackingModelSchema.safeParse(await records.get('tracking', id));
    let kept = await records.list('rows', `${owner}/`);
    let earlier = begun.success && isSame(begun.data, model) ? readRows(kept) : null;
    if (earlier === null) {
      await records.apply([...removingTracking(id), { put: 'tracking', key: id, value: model }]);
      [kept, earlier] = [[], []];
    }
    const lastMs = earlier.at(-1)?.timeMs ?? -1;
    const keeper = createRowSaver(records, owner, { blocks: kept.length, lastMs }, onProblem);
    return {
      earlier,
      addRow: (timed) => keeper.add(timed),
      flush: () => keeper.flush(),
      stop: () => keeper.stop(),
    };
  };
}

function isSame(one: TrackingModel, other: TrackingModel): boolean {
  return one.size === other.size && one.weights === other.weights && one.backend === other.backend;
}

/** Null where they can't be read: then tracking starts again, since the video has everything. */
function readRows(kept: readonly { value: unknown }[]): ReturnType<typeof unpackRows> | null {
  try {
    return unpackRows(kept.map(({ value }) => value));
  } catch {
    return null;
  }
}
