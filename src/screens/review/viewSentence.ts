import type { Measurement } from '../../measurement/measurement';

/** Below this a body counts as square to the camera, degrees. */
const squareDeg = 1.5;

/** What the angles rest on: how the body stands to the camera, and that this has been reckoned out. */
export function viewSentence({ view }: Measurement): string {
  const needs = 'Angles need a camera square to the person.';
  if (view === null) return needs;
  const give = `give or take ${Math.max(1, Math.round(2 * view.sdDeg))}°`;
  const turn = Math.abs(view.yawDeg);
  const stands =
    turn < squareDeg
      ? `Here the body faces it squarely (${give})`
      : `Here the body is turned about ${Math.round(turn)}° to its ${view.yawDeg > 0 ? 'left' : 'right'} (${give})`;
  return `${needs} ${stands}; what that does to the picture is reckoned out, and ± tells how sure the angle is.`;
}
