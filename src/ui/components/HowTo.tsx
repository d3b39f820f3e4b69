import { otherSide } from '#core/protocol/side';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { exerciseCautions, exerciseFelt, exerciseSetup, exerciseSteps } from '#words/exerciseWords';
import { message } from '#words/messages/message';
import { TaskFigure } from './TaskFigure';

interface Props {
  item: PlanItem;
  /** Whether the steps are shown only to those who ask for them. */
  isFolded?: boolean;
}

/** Figure, cautions and steps of a task; where both legs work, for the first one, and 'then the other way round'. */
export function HowTo({ item: { task, sides }, item, isFolded = false }: Props) {
  const side = sides[0] ?? 'right';
  const howTo = (
    <>
      <ol className="plan-steps">
        {[...exerciseSetup(task, side), ...exerciseSteps(task, side)].map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <p>{exerciseFelt(task, side)}</p>
      {sides.length > 1 && <p>{message('exercise.then-other', { side: otherSide(side) })}</p>}
    </>
  );
  return (
    <>
      <TaskFigure task={task} side={side} name={itemName(item)} />
      {exerciseCautions(task).map((caution) => (
        <p key={caution} className="plan-caution">
          {caution}
        </p>
      ))}
      {isFolded ? (
        <details className="plan-how">
          <summary>{message('exercise.step-by-step')}</summary>
          {howTo}
        </details>
      ) : (
        howTo
      )}
    </>
  );
}
