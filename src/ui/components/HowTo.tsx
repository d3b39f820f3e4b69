import { findExercise } from '#core/exercises/exercises';
import { findPreparation } from '#core/exercises/findPreparation';
import { forSide } from '#core/exercises/forSide';
import { otherSide } from '#core/protocol/side';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { TaskFigure } from './TaskFigure';

interface Props {
  item: PlanItem;
  /** Whether the steps are shown only to those who ask for them. */
  isFolded?: boolean;
}

/** Figure, cautions and steps of a task; where both legs work, for the first one, and 'then the other way round'. */
export function HowTo({ item: { task, sides }, item, isFolded = false }: Props) {
  const side = sides[0] ?? 'right';
  const { steps, cautions } = findExercise(task);
  const howTo = (
    <>
      <ol className="plan-steps">
        {[...findPreparation(task, side).steps, ...steps.map((step) => forSide(step, side))].map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {sides.length > 1 && <p>Then the same with the {otherSide(side)} leg.</p>}
    </>
  );
  return (
    <>
      <TaskFigure task={task} side={side} name={itemName(item)} />
      {cautions.map((caution) => (
        <p key={caution} className="plan-caution">
          {caution}
        </p>
      ))}
      {isFolded ? (
        <details className="plan-how">
          <summary>How to do it, step by step</summary>
          {howTo}
        </details>
      ) : (
        howTo
      )}
    </>
  );
}
