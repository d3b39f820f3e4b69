/** Heights that a person can have, cm. */
export const bodyHeightRangeCm = { min: 80, max: 250 };

/** Thigh plus shank as a share of body height; Drillis & Contini, from memory: .245 + .246. */
const legToHeight = 0.491;

/** Length of thigh plus shank of a person of a height, cm. */
export function legLengthCm(bodyHeightCm: number): number {
  return bodyHeightCm * legToHeight;
}
