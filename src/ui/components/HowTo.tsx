import { otherSide } from '#core/protocol/side';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { exerciseCautions, exerciseSetup, exerciseSteps } from '#words/exerciseWords';
import { message } from '#words/messages/message';
import { TaskFigure } from './TaskFigure';

/** Figure, cautions and steps of a task; where both legs work, for the first one, and 'then the other way round'. */
export function HowTo({ item: { task, sides }, item }: { item: PlanItem }) {
  const side = sides[0] ?? 'right';
  return (
    <>
      <TaskFigure task={task} side={side} name={itemName(item)} />
      {exerciseCautions(task).map((caution) => (
        <p key={caution} className="plan-caution">
          {caution}
        </p>
      ))}
      <ol className="plan-steps">
        {[...exerciseSetup(task, side), ...exerciseSteps(task, side)].map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {sides.length > 1 && <p>{message('exercise.then-other', { side: otherSide(side) })}</p>}
    </>
  );
}
