import { Label, RadioButton, RadioField, RadioGroup, Text } from 'react-aria-components';
import { sides, type Side } from '#core/protocol/side';

interface Props {
  value: Side | null;
  onChange: (side: Side) => void;
  /** How to recognise the working side of the chosen task. */
  hint: string;
  /** What is still missing; null where nothing is. */
  error: string | null;
}

const names: Record<Side, string> = { left: 'Left leg', right: 'Right leg' };

/** Which leg works; the person's own left or right. */
export function SideChoice({ value, onChange, hint, error }: Props) {
  return (
    <RadioGroup
      className="field"
      value={value}
      onChange={(side) => onChange(side as Side)}
      isInvalid={error !== null}
    >
      <Label className="field-label">Working side</Label>
      <div className="side-choice">
        {sides.map((side) => (
          <RadioField key={side} value={side}>
            <RadioButton className="side-option">{names[side]}</RadioButton>
          </RadioField>
        ))}
      </div>
      <Text slot="description" className="small soft">
        The person’s own left or right. {hint}
      </Text>
      {error !== null && (
        <span className="small field-error" role="alert">
          {error}
        </span>
      )}
    </RadioGroup>
  );
}
