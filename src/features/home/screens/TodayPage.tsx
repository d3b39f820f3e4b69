import { Button } from 'react-aria-components';
import { itemName } from '#documents/plan/itemName';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { Parts } from '#ui/components/Parts';
import { message, messageParts } from '#words/messages/message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { BackgroundProblems } from './BackgroundProblems';
import { DoneButton } from './DoneButton';
import { dueWords } from './dueWords';
import { HomePage } from './HomePage';
import { InterruptedSets } from './InterruptedSets';
import { LastTimeLine } from './LastTimeLine';
import { LeftToday } from './LeftToday';
import { SilentDays } from './SilentDays';
import { StorageNotice } from './StorageNotice';
import { TodayMore } from './TodayMore';
import { TodayPain } from './TodayPain';
import { Unsent } from './Unsent';
import { WeekDots } from './WeekDots';

interface Props {
  /** The latest one. */
  plan: PlanDocument;
  /** Shows the other ways in: another plan, or none. */
  onOther: () => void;
}

/** What is due, and the one thing to do: to say how much it hurts, or the first time to begin. */
export function TodayPage({ plan, onOther }: Props) {
  const home = useHome();
  const items = useHomeState(({ today }) => today.items);
  const isFollowed = useHomeState(({ today }) => today.isFollowed);
  const isOpening = useHomeStep('plan', (part) => part.isOpening);
  const isBlocked = useHomeState(({ storage }) => storage.state === 'blocked' || storage.state === 'opening');
  return (
    <HomePage
      title={message('today.title')}
      leave={{ words: message('today.start-page'), onPress: () => home.leave() }}
      actions={
        isFollowed ? undefined : (
          <Button
            className="button button-primary"
            isDisabled={isBlocked || isOpening}
            onPress={() => void home.openKeptPlan(plan.id)}
          >
            {message('today.start')}
          </Button>
        )
      }
    >
      <StorageNotice />
      <LeftToday isDisabled={isBlocked || isOpening} />
      <InterruptedSets />
      <SilentDays plan={plan} />
      <Due items={items.length === 0 ? plan.items : items} />
      {isFollowed && <TodayPain plan={plan} />}
      <LastTimeLine />
      <WeekDots plan={plan} />
      <Unsent />
      <DoneButton plan={plan} isDisabled={isBlocked || isOpening} />
      <TodayMore plan={plan} onOther={onOther} isDisabled={isBlocked || isOpening} />
      <BackgroundProblems />
    </HomePage>
  );
}

/** What is due; of several exercises the first, and all of them to those who ask. */
function Due({ items }: { items: readonly PlanItem[] }) {
  const [first, ...others] = items;
  if (first === undefined) return null;
  const due = items.map((item, index) => (
    <p key={index}>
      <Parts
        of={messageParts('today.item', {
          exercise: <strong>{itemName(item)}</strong>,
          dose: dueWords(item),
        })}
      />
    </p>
  ));
  return (
    <section className="today-due" aria-label={message('today.plan')}>
      {others.length === 0 ? (
        due
      ) : (
        <details>
          <summary>
            <Parts
              of={messageParts('today.and-more', {
                exercise: <strong>{itemName(first)}</strong>,
                count: others.length,
              })}
            />
          </summary>
          {due}
        </details>
      )}
    </section>
  );
}
