import { itemName } from '#documents/plan/itemName';
import { Message } from '#ui/components/Message';
import { message } from '#words/messages/message';
import { useHomeState } from '../homeContext';
import type { StepAtHome } from '../rules/stepAtHome';

/** What the device changed of the plan for today, one sentence an exercise. */
export function SteppedNotice() {
  const stepped = useHomeState((state) => state.stepped);
  return stepped.map((step, index) => (
    <Message key={index} kind="plain">
      {steppedWords(step)}
    </Message>
  ));
}

function steppedWords(step: StepAtHome): string {
  const exercise = itemName(step.item);
  if (step.kind === 'more') return message('stepped.more', { exercise, from: step.from, to: step.to });
  const { repetitions } = step;
  return message(step.restToday ? 'stepped.rest-today' : 'stepped.same', { exercise, repetitions });
}
