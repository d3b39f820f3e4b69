import type { Verdict } from '#core/scoring/verdict';
import { quarterTurns, verdictForms, type Pointing } from '../drawing/verdictForm';

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
  const fill = `var(--${verdict})`;
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
    case 'triangle':
      if (pointing === null) return <path d="M0 -8.5L8.5 0L0 8.5L-8.5 0Z" fill={fill} />;
      return <path d="M0 -8.5L8 6.5H-8Z" fill={fill} transform={`rotate(${90 * quarterTurns[pointing]})`} />;
    case 'dash':
      return (
        <rect x="-7" y="-2.5" width="14" height="5" rx="2.5" fill="none" stroke={fill} strokeWidth="2" />
      );
  }
}
