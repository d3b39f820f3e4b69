import { Button } from 'react-aria-components';
import { limitEnds, type LimitEnd } from '#core/measures/limitEnd';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import { withLimit, type Limits } from '#core/protocol/limits';
import { capitalised } from '#words/capitalised';
import { beyondSentence, limitFactor, limitName, limitNumber, limitWords } from '#words/limitWords';
import { LimitSlider } from './LimitSlider';

interface Props {
  measure: MeasureId;
  limits: Limits;
  /** While a slider is held. */
  onMove: (limits: Limits) => void;
  /** When it is let go, and after a limit is set or removed. */
  onMoveEnd: () => void;
}

/** Both limits of a measure: neither is in force until it is set, unless the measure always has them. */
export function MeasureLimits({ measure, ...rest }: Props) {
  return (
    <div className="limits-sliders" role="group" aria-label={findMeasure(measure).name}>
      {[...limitEnds].reverse().map((end) => (
        <EndLimit key={`${measure} ${end}`} measure={measure} end={end} {...rest} />
      ))}
    </div>
  );
}

function EndLimit({ measure, end, limits, onMove, onMoveEnd }: Props & { end: LimitEnd }) {
  const { limits: choices, unit, isAlwaysLimited } = findMeasure(measure);
  const { min, max, step, first } = choices[end];
  const value = limits[measure]?.[end];
  const label = capitalised(limitName(measure, end));
  const factor = limitFactor(measure, end);
  const shown = (raw: number) => Math.round(100 * raw * factor) / 100;
  const put = (next: number | null) => {
    onMove(withLimit(limits, measure, end, next));
    onMoveEnd();
  };
  if (value === undefined) {
    return (
      <div className="limit-none">
        <span className="field-label">{label}: no limit</span>
        <Button className="button button-quiet no-print" onPress={() => put(first)}>
          Set {limitNumber(measure, end, first)}
        </Button>
      </div>
    );
  }
  const slider = (
    <LimitSlider
      label={label}
      value={shown(value)}
      range={{
        min: Math.min(shown(min), shown(max)),
        max: Math.max(shown(min), shown(max)),
        step: Math.abs(shown(step)),
      }}
      unit={unit.short === '°' ? 'degree' : 'percent'}
      shareOf={unit.short === '°' ? null : unit.long.trim()}
      onMove={(next) => onMove(withLimit(limits, measure, end, next / factor))}
      onMoveEnd={onMoveEnd}
    />
  );
  if (isAlwaysLimited) return slider;
  return (
    <div className="limit-set">
      {slider}
      <Button
        className="button button-quiet no-print"
        aria-label={`${label}: no limit`}
        onPress={() => put(null)}
      >
        Remove
      </Button>
    </div>
  );
}

interface SourceProps {
  measure: MeasureId;
  /** Those in force, of which is said how common it is to go beyond them; the proposed ones where left out. */
  limits?: Limits;
}

/** What is in force by default, what is proposed, where it comes from, and how common it is to go beyond. */
export function MeasureLimitSource({ measure, limits: present }: SourceProps) {
  const { isAlwaysLimited, limits } = findMeasure(measure);
  const { least, most } = limits;
  const proposed = (end: LimitEnd) => limitWords(measure, end, limits[end].first);
  const isAlike = least.source === most.source;
  return (
    <>
      {isAlwaysLimited ? 'Default: ' : 'Default: no limit. Proposed: '}
      {proposed('most')}
      {!isAlike && ` (${most.source})`}, {proposed('least')} ({least.source}).{' '}
      {limitEnds.flatMap((end) => {
        const limit = present === undefined ? limits[end].first : present[measure]?.[end];
        return limit === undefined ? [] : (beyondSentence(measure, end, limit) ?? []);
      })}
    </>
  );
}
