import { memo, type CSSProperties } from 'react';
import { Button } from 'react-aria-components';
import type { MeasuredRepetition } from '#core/measurement/measurement';
import type { MeasureId } from '#core/measures/measures';
import type { Judgement } from '#core/scoring/judge';
import { verdictSide, type Verdict } from '#core/scoring/verdict';
import { verdictLabel } from '#words/verdictLabel';
import type { Pointing } from '../drawing/verdictForm';
import { VerdictMark } from './VerdictMark';

interface Props {
  /** The one whose lane is drawn. */
  measure: MeasureId;
  /** Whether it has a limit. */
  hasLane: boolean;
  repetitions: readonly MeasuredRepetition[];
  judgements: readonly Judgement[];
  /** Middle of each repetition's mark, px from the strip's left. */
  middlesPx: readonly number[];
  selected: number | null;
  onSelect: (index: number) => void;
}

/** Width of a three-digit number, px. */
const roomPx = 22;

/**
 * Repetitions in a row: each mark is on, at the edge of, or off the lane of one measure, up for what is more. Where the
 * verdict rests on another measure, a diamond stands beside the number.
 */
export const RepetitionStrip = memo(function RepetitionStrip(props: Props) {
  const { measure, hasLane, repetitions, judgements, middlesPx, selected, onSelect } = props;
  const every = numberedEvery(middlesPx);
  return (
    <div className="strip" role="group" aria-label="Repetitions in order of time">
      {hasLane && <div className="strip-lane" />}
      {repetitions.map(({ number }, index) => {
        const judgement = judgements[index];
        if (judgement === undefined) return null;
        const own = judgement.measures.find((one) => one.measure === measure);
        const isByOther = judgement.decidedBy !== measure && verdictSide(judgement.verdict) === 'out';
        return (
          <Mark
            key={number}
            index={index}
            number={number}
            onSelect={onSelect}
            words={verdictLabel(judgement)}
            verdict={own?.verdict ?? null}
            pointing={own?.end === 'least' ? 'down' : 'up'}
            other={isByOther ? judgement.verdict : null}
            middlePx={middlesPx[index] ?? 0}
            widePx={targetWidthPx(middlesPx, index)}
            isSelected={index === selected}
            hasNumber={every === 1 || number % every === 0 || index === selected}
          />
        );
      })}
    </div>
  );
});

interface MarkProps {
  index: number;
  number: number;
  words: string;
  /** Null where the measure has no limit. */
  verdict: Verdict | null;
  pointing: Extract<Pointing, 'up' | 'down'>;
  /** The verdict, where another measure was out of line. */
  other: Verdict | null;
  middlePx: number;
  widePx: number;
  isSelected: boolean;
  hasNumber: boolean;
  onSelect: (index: number) => void;
}

const Mark = memo(function Mark(props: MarkProps) {
  const {
    index,
    number,
    words,
    verdict,
    pointing,
    other,
    middlePx,
    widePx,
    isSelected,
    hasNumber,
    onSelect,
  } = props;
  return (
    <Button
      className={`strip-mark strip-${verdict ?? 'no-limit'} strip-${pointing}`}
      style={{ '--middle': `${middlePx}px`, '--wide': `${widePx}px` } as CSSProperties}
      aria-label={`Repetition ${number}: ${words}`}
      aria-current={isSelected}
      onPress={() => onSelect(index)}
    >
      {verdict !== null && <VerdictMark verdict={verdict} pointing={pointing} sizePx={16} />}
      <span className="strip-number">
        {hasNumber ? number : ''}
        {other !== null && <VerdictMark verdict={other} pointing={null} sizePx={12} />}
      </span>
    </Button>
  );
});

/** Numbers below every mark or, where they would overlap, below every fifth, tenth and so on. */
function numberedEvery(middlesPx: readonly number[]): number {
  const [first, last] = [middlesPx[0], middlesPx.at(-1)];
  if (first === undefined || last === undefined || middlesPx.length < 2) return 1;
  const gapPx = (last - first) / (middlesPx.length - 1);
  return gapPx >= roomPx ? 1 : 5 * Math.ceil(roomPx / 5 / Math.max(1, gapPx));
}

/**
 * Width of a mark's press target, px: as wide as a finger wants it, but never over the middle between it and
 * a neighbour.
 */
function targetWidthPx(middlesPx: readonly number[], index: number): number {
  const gaps = [index - 1, index].map((at) => middlesPx[at + 1]! - middlesPx[at]!);
  return Math.max(4, Math.min(44, ...gaps.filter((px) => px > 0)));
}
