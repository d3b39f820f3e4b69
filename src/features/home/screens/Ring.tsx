import type { ReactNode } from 'react';
import { clamp } from '#core/clamp';

interface Props {
  /** What is left, 0 to 1. */
  share: number;
  children: ReactNode;
}

const radius = 46;
const around = 2 * Math.PI * radius;

/** Time that runs out, as a ring that empties, with the seconds in it. */
export function Ring({ share, children }: Props) {
  return (
    <div className="ring">
      <svg viewBox="-50 -50 100 100" aria-hidden="true">
        <circle className="ring-whole" r={radius} />
        <circle
          className="ring-left"
          r={radius}
          transform="rotate(-90)"
          strokeDasharray={`${around * clamp(share, 0, 1)} ${around}`}
        />
      </svg>
      <span className="ring-text">{children}</span>
    </div>
  );
}
