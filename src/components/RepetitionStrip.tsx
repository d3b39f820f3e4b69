import type { CSSProperties } from 'react';
import { Button } from 'react-aria-components';
import type { MeasuredRepetition } from '../measurement/measurement';
import { lanePointing } from '../drawing/verdictForm';
import { decidingWay } from '../scoring/decidingMeasure';
import type { Judgement } from '../scoring/judge';
import { verdictWords } from '../words/verdictWords';
import { VerdictMark } from './VerdictMark';

interface Props {
  repetitions: readonly MeasuredRepetition[];
  judgements: readonly Judgement[];
  /** Middle of each repetition's mark, px from the strip's left. */
  middlesPx: readonly number[];
  selected: number | null;
  onSelect: (index: number) => void;
}

/** A number of three digits takes so much, px. */
const roomPx = 22;

/** Repetitions in a row: each mark stands on, at the edge of, or off the lane, up for inward. */
export function RepetitionStrip({ repetitions, judgements, middlesPx, selected, onSelect }: Props) {
  const widePx = markWidthPx(middlesPx);
  const every = numberedEvery(middlesPx);
  return (
    <div className="strip" role="group" aria-label="Repetitions in order of time">
      <div className="strip-lane" />
      {repetitions.map(({ number }, index) => {
        const judgement = judgements[index];
        if (judgement === undefined) return null;
        const { verdict } = judgement;
        const pointing = lanePointing(decidingWay(judgement));
        return (
          <Button
            key={number}
            className={`strip-mark strip-${verdict} strip-${pointing ?? 'aside'}`}
            style={{ '--middle': `${middlesPx[index] ?? 0}px`, '--wide': `${widePx}px` } as CSSProperties}
            aria-label={`Repetition ${number}: ${verdictWords[verdict]}`}
            aria-current={index === selected}
            onPress={() => onSelect(index)}
          >
            <VerdictMark verdict={verdict} pointing={pointing} sizePx={16} />
            <span className="strip-number">
              {every === 1 || number % every === 0 || index === selected ? number : ''}
            </span>
          </Button>
        );
      })}
    </div>
  );
}

/** Numbers stand below every mark, or where they would run into each other below every fifth, tenth and so on. */
function numberedEvery(middlesPx: readonly number[]): number {
  const [first, last] = [middlesPx[0], middlesPx.at(-1)];
  if (first === undefined || last === undefined || middlesPx.length < 2) return 1;
  const gapPx = (last - first) / (middlesPx.length - 1);
  return gapPx >= roomPx ? 1 : 5 * Math.ceil(roomPx / 5 / Math.max(1, gapPx));
}

/** As wide as a finger wants it, where neighbours leave the room; px. */
function markWidthPx(middlesPx: readonly number[]): number {
  const gaps = middlesPx.slice(1).map((middlePx, i) => middlePx - middlesPx[i]!);
  return Math.max(20, Math.min(44, ...gaps));
}
