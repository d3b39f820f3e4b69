import { Input, Label, Text, TextField } from 'react-aria-components';

interface Props {
  label: string;
  value: string;
  onChange: (value: string) => void;
  /** What to know before it is typed. */
  hint?: string;
  autoFocus?: boolean;
}

/** A passphrase, hidden while it is typed, which the browser does not offer to save. */
export function PassphraseField({ label, value, onChange, hint, autoFocus = false }: Props) {
  return (
    <TextField className="field" type="password" value={value} onChange={onChange} autoFocus={autoFocus}>
      <Label className="field-label">{label}</Label>
      <Input className="text-input" autoComplete="off" />
      {hint !== undefined && (
        <Text slot="description" className="small soft">
          {hint}
        </Text>
      )}
    </TextField>
  );
}
