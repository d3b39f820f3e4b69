import { findEntry } from '#core/exercises/library/findEntry';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { otherSide } from '#core/protocol/side';
import { findSetup } from '#core/exercises/taskSetups';
import { TaskFigure } from './TaskFigure';

/** Figure, cautions and steps of a task; where both legs work, for the first one, and 'then the other way round'. */
export function HowTo({ item: { task, sides }, item }: { item: PlanItem }) {
  const side = sides[0] ?? 'right';
  const forSide = (text: string) => text.replaceAll('{side}', side).replaceAll('{other}', otherSide(side));
  const { steps, cautions } = findEntry(task);
  return (
    <>
      <TaskFigure task={task} side={side} name={itemName(item)} />
      {cautions.map((caution) => (
        <p key={caution} className="plan-caution">
          {caution}
        </p>
      ))}
      <ol className="plan-steps">
        {[...findSetup(task, side).setUp, ...steps.map(forSide)].map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {sides.length > 1 && <p>Then the same with the {otherSide(side)} leg.</p>}
    </>
  );
}
