import { Button, Label, TextArea, TextField, ToggleButton } from 'react-aria-components';
import { isDoneInRemark, markDone } from '#documents/session/doneInRemark';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import type { HomeSet } from '../store/homeState';
import { HomePage } from './HomePage';
import { setName } from './setWords';

/** Longest remark, characters, that the session document allows. */
const longestRemark = 2000;

/** A remark, and the sets that are saved with it. */
export function RemarkPage({ back }: { back: (() => void) | undefined }) {
  const home = useHome();
  const remark = useHomeStep('after', (part) => part.remark);
  const sets = useHomeState((state) => state.sets);
  const freeItems = useHomeState((state) => state.plan?.freeItems) ?? [];
  const isSaving = useHomeStep('after', ({ saving }) => saving === 'saving');
  return (
    <HomePage
      title={message('after.add')}
      back={back}
      actions={
        <Button
          className="button button-primary"
          isDisabled={isSaving}
          onPress={() => void home.saveSession()}
        >
          {message(isSaving ? 'after.saving' : 'after.save')}
        </Button>
      }
    >
      {freeItems.length > 0 && (
        <div className="home-section" role="group" aria-label={message('after.also')}>
          <p>{message('after.also')}</p>
          {freeItems.map(({ name, dose }, index) => (
            <ToggleButton
              key={index}
              className="button flag-button"
              isSelected={isDoneInRemark(remark, name)}
              onChange={(isDone) => home.setRemark(markDone(remark, name, isDone).slice(0, longestRemark))}
            >
              {isDoneInRemark(remark, name) ? '✓ ' : ''}
              {dose.trim() === '' ? name : `${name}: ${dose}`}
            </ToggleButton>
          ))}
        </div>
      )}
      <TextField
        className="field"
        value={remark}
        maxLength={longestRemark}
        onChange={(text) => home.setRemark(text)}
      >
        <Label>{message('after.remark')}</Label>
        <TextArea className="text-input remark" />
      </TextField>
      {sets.length > 0 && (
        <section className="home-section">
          <h2>{message('after.saved')}</h2>
          <ul className="saved-sets">
            {sets.map((set, index) => (
              <SavedSet key={index} set={set} index={index} />
            ))}
          </ul>
        </section>
      )}
    </HomePage>
  );
}

function SavedSet({ set, index }: { set: HomeSet; index: number }) {
  const home = useHome();
  const { item, result, isDiscarded, problem } = set;
  return (
    <li>
      <span className={isDiscarded ? 'soft saved-out' : undefined}>{setName({ item, result })}</span>
      <Button
        className="button button-quiet"
        onPress={() => (isDiscarded ? home.undoDiscard(index) : home.discardSet(index))}
      >
        {message(isDiscarded ? 'after.include' : 'after.leave-out')}
      </Button>
      {problem !== null && <Message kind="caution">{problem}</Message>}
    </li>
  );
}
