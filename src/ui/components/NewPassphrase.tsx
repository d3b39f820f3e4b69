import { PassphraseField } from './PassphraseField';
import { passphraseHint } from './passphraseHint';

/** A new passphrase, typed twice so that a slip shows. */
export interface TypedPassphrase {
  passphrase: string;
  repeated: string;
}

export const nothingTyped: TypedPassphrase = { passphrase: '', repeated: '' };

interface Props {
  label: string;
  repeatLabel: string;
  value: TypedPassphrase;
  onChange: (value: TypedPassphrase) => void;
}

/** The two fields of a new passphrase. */
export function NewPassphrase({ label, repeatLabel, value, onChange }: Props) {
  return (
    <>
      <PassphraseField
        label={label}
        hint={passphraseHint}
        value={value.passphrase}
        onChange={(passphrase) => onChange({ ...value, passphrase })}
      />
      <PassphraseField
        label={repeatLabel}
        value={value.repeated}
        onChange={(repeated) => onChange({ ...value, repeated })}
      />
    </>
  );
}
