import { Input, Label, NumberField, Text } from 'react-aria-components';
import { bodyHeightRangeCm } from '#core/protocol/bodyHeight';

interface Props {
  value: number | undefined;
  onChange: (bodyHeightCm: number | undefined) => void;
}

/** The person's height, which may be left out: with it, distances are given in centimetres too. */
export function BodyHeight({ value, onChange }: Props) {
  return (
    <NumberField
      className="field"
      value={value ?? NaN}
      minValue={bodyHeightRangeCm.min}
      maxValue={bodyHeightRangeCm.max}
      formatOptions={{ maximumFractionDigits: 1 }}
      onChange={(cm) => onChange(Number.isNaN(cm) ? undefined : cm)}
    >
      <Label className="field-label">Body height in cm (optional)</Label>
      <Input className="number-input" inputMode="decimal" />
      <Text slot="description" className="small soft">
        Adds distances in centimetres; no angle depends on it.
      </Text>
    </NumberField>
  );
}
