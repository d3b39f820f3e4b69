import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components';

interface Props {
  /** What the button says. */
  label: string;
  terms: readonly { term: string; meaning: string }[];
}

/** Definitions, one tap away. */
export function Terms({ label, terms }: Props) {
  return (
    <DialogTrigger>
      <Button className="button button-quiet no-print">{label}</Button>
      <Popover className="popover" placement="bottom end">
        <Dialog aria-label={label}>
          <dl className="popover-text small">
            {terms.map(({ term, meaning }) => (
              <div key={term}>
                <dt>{term}</dt>
                <dd>{meaning}</dd>
              </div>
            ))}
          </dl>
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
