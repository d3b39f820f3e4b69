import { usePlanWritingState } from '../../app/planWriting/PlanWritingContext';
import { PlanItems } from '../../components/PlanItems';
import { TaskFigure } from '../../components/TaskFigure';
import { findEntry } from '../../library/findEntry';
import { cautionsOf } from '../../plan/cautions';
import { itemName } from '../../plan/itemName';
import { kitList } from '../../plan/kitList';
import type { PlanItem } from '../../plan/planDocument';
import { redFlags } from '../../protocol/redFlags';
import { otherSide } from '../../protocol/side';
import { findSetup } from '../../protocol/taskSetups';

/** The sheet that the patient gets, as it is printed. */
export function PlanSheet() {
  const draft = usePlanWritingState((state) => state.draft);
  const { items, patient, words, howOften, reviewDate, footwear } = draft;
  const { stop, beyondPainLimit, defer } = cautionsOf(draft);
  return (
    <article className="card plan-sheet" aria-label="The patient’s sheet">
      <h2>Exercises for {patient.trim() === '' ? '…' : patient}</h2>
      {howOften !== '' && <p>{howOften}</p>}
      {words !== '' && <blockquote className="plan-words">{words}</blockquote>}
      {items.length === 0 ? <p className="soft">No task yet.</p> : <PlanItems items={items} more={HowTo} />}
      {items.length > 0 && (
        <section>
          <h3>Have this ready</h3>
          <dl className="plan-kit">
            {kitList(items, footwear).map(({ name, sentence }) => (
              <div key={name}>
                <dt>{name}</dt>
                <dd>{sentence}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      <section>
        <h3>When to stop</h3>
        <ul>
          {stop.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
        <p>
          <strong>What to do then:</strong> {beyondPainLimit}
        </p>
      </section>
      <section>
        <h3>Do not exercise, and contact a professional, if</h3>
        <ul>
          {redFlags.map(({ id, words: flag }) => (
            <li key={id}>{flag}.</li>
          ))}
        </ul>
        <p>{defer}</p>
      </section>
      {reviewDate !== null && <p>We look at it again on {reviewDate}.</p>}
    </article>
  );
}

/** Set-up, steps and cautions of a task; where both legs work, for the first one, and 'then the other way round'. */
function HowTo(item: PlanItem) {
  const { task, sides } = item;
  const side = sides[0] ?? 'right';
  const forSide = (text: string) => text.replaceAll('{side}', side).replaceAll('{other}', otherSide(side));
  const { steps, cautions } = findEntry(task);
  return (
    <>
      <TaskFigure task={item.task} side={side} name={itemName(item)} />
      <ol className="plan-steps small">
        {[...findSetup(task, side).setUp, ...steps.map(forSide)].map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {sides.length > 1 && <p className="small">Then the same with the {otherSide(side)} leg.</p>}
      {cautions.map((caution) => (
        <p key={caution} className="small">
          <strong>{caution}</strong>
        </p>
      ))}
    </>
  );
}
