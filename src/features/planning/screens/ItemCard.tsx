import { Button } from 'react-aria-components';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { Choice } from '#ui/components/Choice';
import { NumberBox } from '#ui/components/NumberBox';
import { AboutTask } from './AboutTask';
import { RepetitionFields } from './RepetitionFields';

interface Props {
  item: PlanItem;
  number: number;
  /** @param field  what was typed into, so that a whole word is undone in one step */
  onChange: (item: PlanItem, field?: string) => void;
  onRemove: () => void;
  /** Null where it is first, or last. */
  onMoveUp: (() => void) | null;
  onMoveDown: (() => void) | null;
}

const sideChoices = {
  right: { name: 'Right leg', sides: ['right'] },
  left: { name: 'Left leg', sides: ['left'] },
  'left-right': { name: 'Left, then right', sides: ['left', 'right'] },
  'right-left': { name: 'Right, then left', sides: ['right', 'left'] },
} as const;
type SideChoiceId = keyof typeof sideChoices;
const sideOptions = (Object.keys(sideChoices) as SideChoiceId[]).map((id) => ({
  id,
  name: sideChoices[id].name,
}));

/** One task of a plan: which leg, how much, and its limits. */
export function ItemCard({ item, number, onChange, onRemove, onMoveUp, onMoveDown }: Props) {
  const name = itemName(item);
  const { sets, restSeconds } = planRanges;
  return (
    <section className="card plan-card" aria-label={`Task ${number}: ${name}`} tabIndex={-1}>
      <header className="plan-card-head">
        <h3>
          {number}. {name}
        </h3>
        <span className="button-row">
          <Move words="up" name={name} onPress={onMoveUp} />
          <Move words="down" name={name} onPress={onMoveDown} />
          <Button className="button button-quiet" aria-label={`Remove ${name}`} onPress={onRemove}>
            Remove
          </Button>
        </span>
      </header>
      <div className="plan-pair">
        <Choice
          label="Side"
          options={sideOptions}
          value={item.sides.join('-') as SideChoiceId}
          onChange={(id) => onChange({ ...item, sides: [...sideChoices[id].sides] })}
        />
        <NumberBox
          label="Sets"
          value={item.sets}
          range={sets}
          onChange={(value) => onChange({ ...item, sets: value }, 'sets')}
        />
        {item.kind === 'hold' ? (
          <>
            <NumberBox
              label="Holds per set"
              value={item.holds}
              range={planRanges.holds}
              onChange={(holds) => onChange({ ...item, holds }, 'holds')}
            />
            <NumberBox
              label="Seconds per hold"
              value={item.holdSeconds}
              range={planRanges.holdSeconds}
              onChange={(holdSeconds) => onChange({ ...item, holdSeconds }, 'holdSeconds')}
            />
          </>
        ) : (
          <NumberBox
            label="Repetitions per set"
            value={item.repetitions}
            range={planRanges.repetitions}
            onChange={(repetitions) => onChange({ ...item, repetitions }, 'repetitions')}
          />
        )}
        <NumberBox
          label="Rest, seconds"
          value={item.restSeconds}
          range={restSeconds}
          onChange={(value) => onChange({ ...item, restSeconds: value }, 'restSeconds')}
        />
      </div>
      {item.kind === 'repetitions' && <RepetitionFields item={item} onChange={onChange} />}
      <AboutTask id={item.task} />
    </section>
  );
}

function Move({
  words,
  name,
  onPress,
}: {
  words: 'up' | 'down';
  name: string;
  onPress: (() => void) | null;
}) {
  return (
    <Button
      className="button button-quiet"
      aria-label={`Move ${name} ${words}`}
      data-move={words}
      isDisabled={onPress === null}
      onPress={() => onPress?.()}
    >
      {words === 'up' ? '↑' : '↓'}
    </Button>
  );
}
