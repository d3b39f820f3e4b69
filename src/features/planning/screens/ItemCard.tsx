import { Button } from 'react-aria-components';
import type { PainfulSide } from '#documents/patient/patientDocument';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { Choice } from '#ui/components/Choice';
import { NumberBox } from '#ui/components/NumberBox';
import { sideChoices } from '../rules/sideChoices';
import { AboutTask } from './AboutTask';
import { EditStages } from './EditStages';
import { HeightFields } from './HeightFields';
import { MoreFields } from './MoreFields';
import { RepetitionFields } from './RepetitionFields';
import { StageChoice } from './StageChoice';

interface Props {
  item: PlanItem;
  number: number;
  /** Which knee of the patient is noted as painful; null where nothing is noted. */
  painful: PainfulSide | null;
  /** @param field  what was typed into, so that a whole word is undone in one step */
  onChange: (item: PlanItem, field?: string) => void;
  onRemove: () => void;
  /** Null where it is first, or last. */
  onMoveUp: (() => void) | null;
  onMoveDown: (() => void) | null;
}

/** One task of a plan: which leg, how much, and its limits. */
export function ItemCard({ item, number, painful, onChange, onRemove, onMoveUp, onMoveDown }: Props) {
  const name = itemName(item);
  const { sets, restSeconds } = planRanges;
  const choices = sideChoices(painful);
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
          options={choices}
          value={item.sides.join('-')}
          placeholder="Choose …"
          onChange={(id) =>
            onChange({ ...item, sides: choices.find((choice) => choice.id === id)?.sides ?? [] })
          }
        />
        <StageChoice item={item} onChange={onChange} />
        <NumberBox
          label="Sets"
          value={item.sets}
          range={sets}
          onChange={(value) => onChange({ ...item, sets: value }, 'sets')}
        />
        {item.kind === 'hold' ? (
          <>
            <NumberBox
              label="Holds a set"
              value={item.holds}
              range={planRanges.holds}
              onChange={(holds) => onChange({ ...item, holds }, 'holds')}
            />
            <NumberBox
              label="Seconds a hold"
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
        <HeightFields item={item} onChange={onChange} />
      </div>
      {item.kind === 'repetitions' && <RepetitionFields item={item} onChange={onChange} />}
      <MoreFields item={item} onChange={onChange} />
      <div className="button-row">
        <EditStages item={item} />
      </div>
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
