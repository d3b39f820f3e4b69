import { Label, RadioButton, RadioField, RadioGroup, Text } from 'react-aria-components';
import { sides, type Side } from '#core/protocol/side';
import { message } from '#words/messages/message';

interface Props {
  value: Side | null;
  onChange: (side: Side) => void;
  /** How to recognise the working side of the chosen task. */
  hint: string;
  /** In place of the words for those who measure somebody else: the question, and the whole hint. */
  own?: { label: string; hint: string };
  /** What is still missing; null where nothing is. */
  error: string | null;
}

/** Which leg works; the person's own left or right. */
export function SideChoice({ value, onChange, hint, own, error }: Props) {
  return (
    <RadioGroup
      className="field"
      value={value}
      onChange={(side) => onChange(side as Side)}
      isInvalid={error !== null}
    >
      <Label className="field-label">{own?.label ?? 'Working side'}</Label>
      <div className="side-choice">
        {sides.map((side) => (
          <RadioField key={side} value={side}>
            <RadioButton className="side-option">{message(`free.${side}`)}</RadioButton>
          </RadioField>
        ))}
      </div>
      <Text slot="description" className="small soft">
        {own?.hint ?? `The person’s own left or right. ${hint}`}
      </Text>
      {error !== null && (
        <span className="small field-error" role="alert">
          {error}
        </span>
      )}
    </RadioGroup>
  );
}
