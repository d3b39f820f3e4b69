/** The camera's position: 'square', or turned round the person by at most n degrees. */
export const cameraGroups = ['square', 'upTo10', 'upTo20', 'beyond20'] as const;
export type CameraGroup = (typeof cameraGroups)[number];

/** Below this, yaw and roll count as square, degrees. */
export const squareBelowDeg = 2;

export const cameraGroupWords: Record<CameraGroup, string> = {
  square: `square (yaw and roll below ${squareBelowDeg}°)`,
  upTo10: 'turned, up to 10°',
  upTo20: 'turned, 10° to 20°',
  beyond20: 'turned, beyond 20°',
};

/** The group of a clip; each clip is in one only. */
export function cameraGroup({ yawDeg, rollDeg }: { yawDeg: number; rollDeg: number }): CameraGroup {
  const yaw = Math.abs(yawDeg);
  if (yaw < squareBelowDeg && Math.abs(rollDeg) < squareBelowDeg) return 'square';
  if (yaw <= 10) return 'upTo10';
  return yaw <= 20 ? 'upTo20' : 'beyond20';
}
