import { Input, Label, NumberField } from 'react-aria-components';

interface Props {
  label: string;
  /** Null: left open. */
  value: number | null;
  /** What makes sense; other numbers are accepted and marked, so that the user sees them. */
  range: { min: number; max: number };
  onChange: (value: number | null) => void;
  placeholder?: string;
}

/** A number that may be left empty. */
export function OpenBox({ label, value, range, onChange, placeholder = '–' }: Props) {
  return (
    <NumberField
      className="field"
      value={value ?? NaN}
      isInvalid={value !== null && (value < range.min || value > range.max)}
      onChange={(next) => onChange(Number.isNaN(next) ? null : next)}
      formatOptions={{ maximumFractionDigits: 1 }}
    >
      <Label className="field-label">{label}</Label>
      <Input className="number-input" placeholder={placeholder} />
    </NumberField>
  );
}
