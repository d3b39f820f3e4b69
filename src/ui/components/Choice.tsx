import { Button, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from 'react-aria-components';

export interface Option<Id extends string> {
  id: Id;
  name: string;
  /** Plain words below the name. */
  hint?: string;
}

interface Props<Id extends string> {
  label: string;
  options: readonly Option<Id>[];
  value: Id;
  onChange: (value: Id) => void;
  /** Shown while nothing of the options is chosen. */
  placeholder?: string;
  /** The label is read out but not shown. */
  isLabelHidden?: boolean;
}

/** One of a few, from a list that opens. */
export function Choice<Id extends string>({
  label,
  options,
  value,
  onChange,
  placeholder,
  isLabelHidden,
}: Props<Id>) {
  return (
    <Select
      className="field"
      value={options.some(({ id }) => id === value) ? value : null}
      onChange={(key) => onChange(key as Id)}
    >
      <Label className={isLabelHidden ? 'visually-hidden' : 'field-label'}>{label}</Label>
      <Button className="select-button">
        <SelectValue>{() => options.find(({ id }) => id === value)?.name ?? placeholder}</SelectValue>
        <span aria-hidden="true">▾</span>
      </Button>
      <Popover className="popover">
        <ListBox items={options}>
          {({ id, name, hint }) => (
            <ListBoxItem id={id} textValue={name} className="option">
              {name}
              {hint !== undefined && <span className="soft">{hint}</span>}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
