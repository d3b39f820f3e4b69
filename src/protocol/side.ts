export const sides = ['left', 'right'] as const;
/** The person's own left or right, whatever the picture shows. */
export type Side = (typeof sides)[number];

export function otherSide(side: Side): Side {
  return side === 'left' ? 'right' : 'left';
}
