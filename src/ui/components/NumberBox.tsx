import { Input, Label, NumberField } from 'react-aria-components';

interface Props {
  label: string;
  value: number;
  /** What makes sense; other numbers are accepted and marked, so that the user sees them. */
  range: { min: number; max: number };
  onChange: (value: number) => void;
}

/** A number that may be out of range for now. */
export function NumberBox({ label, value, range, onChange }: Props) {
  return (
    <NumberField
      className="field"
      value={value}
      isInvalid={value < range.min || value > range.max}
      onChange={(next) => !Number.isNaN(next) && onChange(next)}
      formatOptions={{ maximumFractionDigits: 1 }}
    >
      <Label className="field-label">{label}</Label>
      <Input className="number-input" />
    </NumberField>
  );
}
