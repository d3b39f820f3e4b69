import type { SVGProps } from 'react';
import type { Verdict } from '#core/scoring/verdict';
import { quarterTurns, verdictForms, verdictTokens, type Pointing } from '../drawing/verdictForm';

interface Props {
  verdict: Verdict;
  /**
   * Where a triangle points; the other forms look the same either way. Null: the knee was not the one out of
   * line.
   */
  pointing?: Pointing | null;
  sizePx?: number;
}

/** The mark of a verdict: form first, then colour. Words are next to it; the mark is never the only sign. */
export function VerdictMark({ verdict, pointing = 'up', sizePx = 18 }: Props) {
  return (
    <svg className="verdict-mark" viewBox="-10 -10 20 20" width={sizePx} height={sizePx} aria-hidden="true">
      <MarkShape verdict={verdict} pointing={pointing} />
    </svg>
  );
}

/** The same mark as a part of another drawing, around (0, 0), 16 wide. */
export function MarkShape({ verdict, pointing }: { verdict: Verdict; pointing: Pointing | null }) {
  const fill = verdictTokens[verdict];
  switch (verdictForms[verdict]) {
    case 'dot':
      return <circle r="7" fill={fill} />;
    case 'half-dot':
      return (
        <>
          <circle r="7" fill="var(--mark-hollow)" />
          <path d="M0 -7A7 7 0 0 0 0 7Z" fill={fill} />
        </>
      );
    case 'ring':
      return <circle r="5.5" fill="var(--mark-hollow)" stroke={fill} strokeWidth="3.5" />;
    case 'triangle':
      return (
        <Pointed
          pointing={pointing}
          path="M0 -8.5L8 6.5H-8Z"
          diamond="M0 -8.5L8.5 0L0 8.5L-8.5 0Z"
          fill={fill}
        />
      );
    case 'open-triangle':
      return (
        <Pointed
          pointing={pointing}
          path="M0 -6L5.5 4.8H-5.5Z"
          diamond="M0 -6.5L6.5 0L0 6.5L-6.5 0Z"
          fill="var(--mark-hollow)"
          stroke={fill}
          strokeWidth="3"
        />
      );
    case 'dash':
      return (
        <rect x="-7" y="-2.5" width="14" height="5" rx="2.5" fill="none" stroke={fill} strokeWidth="2" />
      );
  }
}

interface PointedProps extends SVGProps<SVGPathElement> {
  pointing: Pointing | null;
  /** Points up. */
  path: string;
  /** Where it points nowhere. */
  diamond: string;
}

function Pointed({ pointing, path, diamond, ...paint }: PointedProps) {
  if (pointing === null) return <path d={diamond} strokeLinejoin="round" {...paint} />;
  return (
    <path d={path} strokeLinejoin="round" transform={`rotate(${90 * quarterTurns[pointing]})`} {...paint} />
  );
}
