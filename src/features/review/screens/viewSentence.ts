import type { Measurement } from '#core/measurement/measurement';
import { widestYawDeg } from '#core/measurement/seeView';

/** Below this a body counts as square to the camera, degrees. */
const squareDeg = 1.5;

/** The direction the camera viewed from, as inferred from the recording, and what the angles therefore are. */
export function viewSentence({ view }: Pick<Measurement, 'view'>): string {
  if (view === null) return 'The view could not be estimated from this recording, so no angle is given.';
  const give = `give or take ${Math.max(1, Math.round(2 * view.sdDeg))}°`;
  const turnDeg = Math.abs(view.yawDeg);
  // A body that is turned to its left shows the camera its right.
  const from =
    turnDeg < squareDeg
      ? 'from straight ahead'
      : `from about ${Math.round(turnDeg)}° to the person’s ${view.yawDeg > 0 ? 'right' : 'left'}`;
  const camera = `the camera looked ${from}, ${give}`;
  if (turnDeg > widestYawDeg) return `No angle is given: in this recording, ${camera}.`;
  return `The angle is seen square to the body. The view was estimated from the recording: ${camera}. “±” is how far an angle may be off.`;
}
