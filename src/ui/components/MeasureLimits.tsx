import { Button } from 'react-aria-components';
import { limitChoices, limitEnds, withLimit, type LimitEnd, type Limits } from '#core/protocol/limits';
import type { MeasureId } from '#core/measures/measures';
import { capitalised } from '#words/capitalised';
import { measureNames, measureUnits } from '#words/formatMeasure';
import { limitFactor, limitName, limitNumber, limitWords } from '#words/limitWords';
import { LimitSlider } from './LimitSlider';

interface Props {
  measure: MeasureId;
  limits: Limits;
  /** While a slider is held. */
  onMove: (limits: Limits) => void;
  /** When it is let go, and after a limit was set or taken away. */
  onMoveEnd: () => void;
}

/** Both limits of a measure beside the knee angle: neither is in force until it is set. */
export function MeasureLimits({ measure, ...rest }: Props) {
  return (
    <div className="limits-sliders" role="group" aria-label={measureNames[measure]}>
      {[...limitEnds].reverse().map((end) => (
        <EndLimit key={`${measure} ${end}`} {...{ measure, end }} {...rest} />
      ))}
    </div>
  );
}

function EndLimit({ measure, end, limits, onMove, onMoveEnd }: Props & { end: LimitEnd }) {
  const { min, max, step, first } = limitChoices[measure][end];
  const value = limits.others?.[measure]?.[end];
  const label = capitalised(limitName(measure, end));
  const factor = limitFactor(measure, end);
  const shown = (raw: number) => Math.round(raw * factor);
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
  return (
    <div className="limit-set">
      <LimitSlider
        label={label}
        value={shown(value)}
        range={{
          min: Math.min(shown(min), shown(max)),
          max: Math.max(shown(min), shown(max)),
          step: Math.abs(shown(step)),
        }}
        unit={measureUnits[measure].short === '°' ? 'degree' : 'percent'}
        onMove={(next) => onMove(withLimit(limits, measure, end, next / factor))}
        onMoveEnd={onMoveEnd}
      />
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

/** What is in force by default, what is proposed, and where it comes from. */
export function MeasureLimitSource({ measure }: { measure: MeasureId }) {
  const { least, most } = limitChoices[measure];
  const proposed = (end: LimitEnd) => limitWords(measure, end, limitChoices[measure][end].first);
  const isAlike = least.source === most.source;
  return (
    <>
      Default: no limit. Proposed: {proposed('most')}
      {!isAlike && ` (${most.source})`}, {proposed('least')} ({least.source}).
    </>
  );
}
