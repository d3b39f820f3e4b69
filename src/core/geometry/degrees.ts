export function toDegrees(rad: number): number {
  return (rad * 180) / Math.PI;
}

export function toRadians(deg: number): number {
  return (deg * Math.PI) / 180;
}
