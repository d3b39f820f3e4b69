import type { PlacingArrow } from '../placing/placing';

/** Where to go, turn or move the camera, large enough for three metres. */
export function DirectionArrow({ arrow }: { arrow: Exclude<PlacingArrow, 'none'> }) {
  return (
    <svg className="direction" viewBox="-50 -50 100 100" aria-hidden="true">
      {shapes[arrow]}
    </svg>
  );
}

const straight = <path d="M-46 0L-2 -38V-15H46V15H-2V38Z" />;
/** Round the upright axis, seen from a little above; the nearer half of the way. */
const turn = (
  <>
    <path className="direction-axis" d="M0 -44V44" />
    <path d="M42 -26C42 14 18 24 -14 22V40L-48 8L-14 -22V-5C8 -3 24 -8 22 -26Z" />
  </>
);
/** The camera in its own plane. */
const tip = (
  <>
    <rect
      className="direction-device"
      x="-17"
      y="-20"
      width="34"
      height="62"
      rx="6"
      transform="rotate(-14)"
    />
    <path d="M36 -6C34 -34 6 -46 -18 -37L-24 -50L-46 -24L-12 -16L-15 -26C2 -32 20 -24 22 -6Z" />
  </>
);
/** The camera higher, or its upper edge back. */
const raise = (
  <>
    <rect className="direction-device" x="-44" y="-30" width="34" height="62" rx="6" />
    <path d="M22 -46L48 -10H32V42H12V-10H-4Z" />
  </>
);

const shapes: Record<Exclude<PlacingArrow, 'none'>, React.ReactNode> = {
  left: straight,
  right: <g transform="scale(-1 1)">{straight}</g>,
  up: raise,
  down: <g transform="scale(1 -1)">{raise}</g>,
  // On the floor, in perspective: towards the camera it widens, away from it it narrows.
  closer: <path d="M-7 -46H7L16 2H46L0 46L-46 2H-16Z" />,
  farther: <path d="M-24 46H24L11 -6H32L0 -46L-32 -6H-11Z" />,
  'turn-left': turn,
  'turn-right': <g transform="scale(-1 1)">{turn}</g>,
  'tip-left': tip,
  'tip-right': <g transform="scale(-1 1)">{tip}</g>,
};
