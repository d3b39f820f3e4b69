import { Input, Label, NumberField, Slider, SliderThumb, SliderTrack } from 'react-aria-components';

interface Props {
  label: string;
  value: number;
  range: { min: number; max: number; step: number };
  unit: 'degree' | 'percent';
  /** What it is a share of, '% of leg length'; null for an angle. */
  shareOf: string | null;
  /** While the slider is held. */
  onMove: (value: number) => void;
  /** When it is let go. */
  onMoveEnd: () => void;
}

/** One limit, by slider or number. */
export function LimitSlider({
  label,
  value,
  range: { min, max, step },
  unit,
  shareOf,
  onMove,
  onMoveEnd,
}: Props) {
  return (
    <div className="limit">
      <Slider
        minValue={min}
        maxValue={max}
        step={step}
        value={value}
        onChange={(next) => onMove(next as number)}
        onChangeEnd={onMoveEnd}
        formatOptions={{ style: 'unit', unit }}
      >
        <Label className="field-label">{shareOf === null ? label : `${label}, ${shareOf}`}</Label>
        <SliderTrack className="limit-track">
          <div className="limit-fill" style={{ right: `${100 - (100 * (value - min)) / (max - min)}%` }} />
          <SliderThumb className="limit-thumb" />
        </SliderTrack>
      </Slider>
      <NumberField
        aria-label={`${label}, ${shareOf ?? 'degrees'}`}
        minValue={min}
        maxValue={max}
        step={step}
        value={value}
        onChange={(next) => {
          if (!Number.isFinite(next)) return;
          onMove(next);
          onMoveEnd();
        }}
        formatOptions={{ style: 'unit', unit, unitDisplay: 'narrow' }}
      >
        <Input className="number-input" />
      </NumberField>
    </div>
  );
}
