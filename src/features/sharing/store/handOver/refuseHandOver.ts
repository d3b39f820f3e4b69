import { Problem } from '#core/problem';
import { handOverBounds } from '#documents/backup/handOverManifest';
import { firstLine } from '../firstLine';

/**
 * For where sessions are opened.
 *
 * @param blob  unsealed
 * @throws Problem  where it is a patient's record from a colleague, with where that is opened
 */
export async function refuseHandOver(blob: Blob): Promise<void> {
  const head = await firstLine(blob, handOverBounds.manifestBytes);
  if (head?.line.startsWith('{"format":"overfoot-hand-over"') !== true) return;
  throw new Problem(
    'file',
    'It is a patient’s record that a colleague hands over. Open it under “Take over”, in the list of patients.',
  );
}
