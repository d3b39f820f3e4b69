import type { ViewSign } from '#core/exercises/exercise';
import { fuseCues, type YawEstimate } from '#core/view/fuseCues';
import { measureViewCues, usualSdDeg, type ViewScene } from '#core/view/measureViewCues';

/**
 * What a set's own recording is going to read as its yaw: what the stance foot says shows already; what only shows in
 * the movement will say about what the standing or seated body says now, as surely as it usually does.
 *
 * @param now  how the body stands to the camera as it stands or sits
 */
export function expectYaw(scene: ViewScene, signs: readonly ViewSign[], now: YawEstimate): YawEstimate {
  const shown = measureViewCues(
    scene,
    signs.filter((sign) => sign === 'stance-foot'),
  );
  const later = signs.flatMap((name) =>
    name === 'stance-foot' ? [] : [{ name, yawDeg: now.yawDeg, sdDeg: usualSdDeg[name] }],
  );
  return fuseCues([...shown, ...later]);
}
