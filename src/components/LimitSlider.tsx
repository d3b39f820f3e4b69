import { Input, Label, NumberField, Slider, SliderThumb, SliderTrack } from 'react-aria-components';
import { limitRangeDeg } from '../protocol/limits';

interface Props {
  label: string;
  valueDeg: number;
  /** While the slider is held. */
  onMove: (deg: number) => void;
  /** When it is let go. */
  onMoveEnd: () => void;
}

const { min, max } = limitRangeDeg;

/** One limit in degrees, by slider or number. */
export function LimitSlider({ label, valueDeg, onMove, onMoveEnd }: Props) {
  return (
    <div className="limit">
      <Slider
        minValue={min}
        maxValue={max}
        value={valueDeg}
        onChange={(value) => onMove(value as number)}
        onChangeEnd={onMoveEnd}
        formatOptions={{ style: 'unit', unit: 'degree' }}
      >
        <Label className="field-label">{label}</Label>
        <SliderTrack className="limit-track">
          <div className="limit-fill" style={{ right: `${100 - (100 * (valueDeg - min)) / (max - min)}%` }} />
          <SliderThumb className="limit-thumb" />
        </SliderTrack>
      </Slider>
      <NumberField
        aria-label={`${label}, degrees`}
        minValue={min}
        maxValue={max}
        step={1}
        value={valueDeg}
        onChange={(value) => {
          if (!Number.isFinite(value)) return;
          onMove(value);
          onMoveEnd();
        }}
        formatOptions={{ style: 'unit', unit: 'degree', unitDisplay: 'narrow' }}
      >
        <Input className="number-input" />
      </NumberField>
    </div>
  );
}
