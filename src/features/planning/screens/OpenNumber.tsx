import { Input, Label, NumberField, Text } from 'react-aria-components';
import { mostAboveUsual } from '#core/safety/painScale';
import { planRanges } from '#documents/plan/planRanges';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';

/** Left empty where it is not known. */
export function UsualPain() {
  return (
    <OpenNumber
      field="usualPain"
      label="Usual pain, 0 to 10, if you know it"
      hint={`More than ${mostAboveUsual} above it means stop, even within the limit.`}
    />
  );
}

/** Left empty where the therapist leaves it open. */
export function PerWeek() {
  return (
    <OpenNumber
      field="perWeek"
      label="Times a week, if you want to set it"
      hint="The patient sees how many are done this week, and can have them put in a calendar."
    />
  );
}

interface Props {
  field: 'usualPain' | 'perWeek';
  label: string;
  hint: string;
}

/** A whole number that may be left empty. */
function OpenNumber({ field, label, hint }: Props) {
  const writing = usePlanWriting();
  const value = usePlanWritingState(({ draft }) => draft[field]);
  const { min, max } = planRanges[field];
  return (
    <NumberField
      className="field"
      value={value ?? NaN}
      minValue={min}
      maxValue={max}
      onChange={(next) => writing.change({ [field]: Number.isNaN(next) ? null : next }, field)}
    >
      <Label className="field-label">{label}</Label>
      <Input className="number-input" />
      <Text slot="description" className="small soft">
        {hint}
      </Text>
    </NumberField>
  );
}
