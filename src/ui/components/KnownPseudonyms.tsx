import { Button } from 'react-aria-components';
import { plainName } from '#documents/schema/plainName';
import './pseudonymForm.css';

interface Props {
  typed: string;
  known: readonly string[];
  onChoose: (pseudonym: string) => void;
}

/** Few enough to read at a glance. */
const mostSuggested = 6;

/** The known pseudonyms that what is typed may become; none once it is one of them. */
export function KnownPseudonyms({ typed, known, onChoose }: Props) {
  const name = plainName(typed);
  const suggested = known.includes(name)
    ? []
    : known.filter((one) => one.toLowerCase().includes(name.toLowerCase())).slice(0, mostSuggested);
  if (suggested.length === 0) return null;
  return (
    <div className="pseudonym-known" role="group" aria-label="Known pseudonyms">
      {suggested.map((one) => (
        <Button key={one} className="button button-quiet" onPress={() => onChoose(one)}>
          {one}
        </Button>
      ))}
    </div>
  );
}
