import { Button, Group, Input, Label, NumberField } from 'react-aria-components';

interface Props {
  label: string;
  value: number;
  range: { min: number; max: number };
  onChange: (value: number) => void;
}

/** A small whole number, with buttons that a thumb can hit. */
export function Stepper({ label, value, range, onChange }: Props) {
  return (
    <NumberField
      className="field"
      value={value}
      minValue={range.min}
      maxValue={range.max}
      onChange={(next) => !Number.isNaN(next) && onChange(next)}
    >
      <Label className="field-label">{label}</Label>
      <Group className="stepper">
        <Button slot="decrement" className="button">
          −
        </Button>
        <Input className="number-input" />
        <Button slot="increment" className="button">
          +
        </Button>
      </Group>
    </NumberField>
  );
}
