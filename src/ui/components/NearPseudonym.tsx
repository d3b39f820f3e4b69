import { Button } from 'react-aria-components';

interface Props {
  /** The known one that is probably meant. */
  near: string;
  /** As it was typed. */
  name: string;
  onSame: () => void;
  onOther: () => void;
}

/** Asks whether a pseudonym that looks like a slip of a known one is the same patient. */
export function NearPseudonym({ near, name, onSame, onOther }: Props) {
  return (
    <div className="message" role="alert">
      <p>
        <strong>{near}</strong> is known here, and much like what you wrote. Do you mean the same patient?
      </p>
      <div className="button-row">
        <Button className="button" onPress={onSame}>
          Yes, {near}
        </Button>
        <Button className="button" onPress={onOther}>
          No, {name} is somebody else
        </Button>
      </div>
    </div>
  );
}
