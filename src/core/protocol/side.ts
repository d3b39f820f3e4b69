export const sides = ['left', 'right'] as const;
/** The person's own left or right, whatever the picture shows. */
export type Side = (typeof sides)[number];

/** Which way a leg's outside is, for somebody who faces the viewer: 1 = to the viewer's right, -1 = to their left. */
export function outwardSign(side: Side): 1 | -1 {
  return side === 'left' ? 1 : -1;
}

export function otherSide(side: Side): Side {
  return side === 'left' ? 'right' : 'left';
}
