import { range } from 'd3-array';
import { Button, ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { Parts } from '#ui/components/Parts';
import { message, messageParts } from '#words/messages/message';
import { painWords } from '#words/painWords';
import { useHome } from '../homeContext';

const scores = range(11);

/**
 * Nothing of what is listed applies. After a session, the number that says how much it hurt afterwards says so too, and
 * takes no tap more.
 */
export function NothingNew({ words }: { words: string }) {
  const home = useHome();
  return (
    <section className="nothing-new">
      <p id="worst-after">
        <Parts of={messageParts('check.worst-after', { nothing: <strong>{words}</strong> })} />
      </p>
      <ToggleButtonGroup
        className="nothing-new-numbers"
        aria-labelledby="worst-after"
        selectedKeys={[]}
        onSelectionChange={([score]) => {
          if (score !== undefined) home.noneOfThese(Number(score));
        }}
      >
        {scores.map((score) => (
          <ToggleButton
            key={score}
            id={String(score)}
            className="scale-number"
            aria-label={[String(score), painWords(score)].filter(Boolean).join(', ')}
          >
            {score}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      <Button className="button button-quiet" onPress={() => home.noneOfThese(null)}>
        {message('check.worst-unknown')}
      </Button>
    </section>
  );
}
