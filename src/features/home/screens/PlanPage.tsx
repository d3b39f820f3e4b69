import { Button } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import { perWeekSentence } from '#documents/plan/perWeekSentence';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { videoWishSentence } from '#documents/plan/videoWishSentence';
import { HowTo } from '#ui/components/HowTo';
import { KeyWords } from '#ui/components/KeyWords';
import { KitList } from '#ui/components/KitList';
import { Message } from '#ui/components/Message';
import { PlanItems } from '#ui/components/PlanItems';
import { StopRules } from '#ui/components/StopRules';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';

/** What will be done, what is needed for it, and when to stop; ends with a plain confirmation. */
export function PlanPage() {
  const home = useHome();
  const plan = useHomeState((state) => state.plan);
  const steps = useHomeState((state) => state.steps);
  const earlierKey = useHomeStep('overview', (state) => state.earlierKey);

  const items = [...new Set(steps.map(({ item }) => item))];
  const confirm = () => {
    home.setConfirmed(true);
    home.confirm();
  };
  return (
    <HomePage
      title={plan === null ? 'What you are going to do' : 'Hello. This is your plan for today'}
      leave={{ words: 'Back', onPress: () => home.back() }}
    >
      {earlierKey !== null && plan !== null && (
        <OtherKey earlierKey={earlierKey} returnKey={plan.returnKey} />
      )}
      {plan !== null && plan.note !== '' && <Message kind="plain">{plan.note}</Message>}
      <PlanItems items={items} more={(item) => <HowTo item={item} />} />
      {plan !== null && <TherapistWords plan={plan} />}
      <Kit items={items} plan={plan} />
      <Stops plan={plan} />
      {plan !== null && plan.returnKey !== null && (
        <p>
          Sessions that you send back open only with your therapist’s key. Its words are{' '}
          <KeyWords of={plan.returnKey} />.
        </p>
      )}
      {plan !== null && <p className="small soft">This plan is for {plan.patient}.</p>}
      <section className="home-section home-end">
        <p>
          <strong>Before you continue:</strong> have you read this, and is everything ready?
        </p>
        <Button className="button button-primary" onPress={confirm}>
          Yes, I am ready
        </Button>
      </section>
    </HomePage>
  );
}

/** Somebody who passes a plan on could put in a key of their own. */
function OtherKey({ earlierKey, returnKey }: { earlierKey: string; returnKey: string | null }) {
  return (
    <Message kind="caution" title="This plan has another key than the one before">
      {returnKey === null ? (
        <p>It has no key at all, so sessions can’t be sent back sealed.</p>
      ) : (
        <p>
          Before: <KeyWords of={earlierKey} />. Now: <KeyWords of={returnKey} />. What you send would open for
          somebody else. Ask your therapist whether the new words are theirs before you continue.
        </p>
      )}
    </Message>
  );
}

function TherapistWords({ plan }: { plan: PlanDocument }) {
  const { words, howOften } = plan;
  const perWeek = perWeekSentence(plan);
  const videoWish = videoWishSentence(plan);
  if (words === '' && howOften === '' && perWeek === null && videoWish === null) return null;
  return (
    <section className="home-section">
      <h2>From your therapist</h2>
      {words !== '' && <blockquote className="plan-words">{words}</blockquote>}
      {perWeek !== null && <p>{perWeek}</p>}
      {howOften !== '' && <p>{howOften}</p>}
      {videoWish !== null && <p>{videoWish}</p>}
    </section>
  );
}

function Kit({ items, plan }: { items: readonly PlanItem[]; plan: PlanDocument | null }) {
  return (
    <section className="card home-section">
      <h2>Have this ready</h2>
      <KitList items={items} footwear={plan?.footwear ?? 'either'} />
    </section>
  );
}

function Stops({ plan }: { plan: PlanDocument | null }) {
  const { stop, beyondPainLimit, ifItGivesWay, defer } = cautionsOf(plan);
  return (
    <section className="message message-caution">
      <div className="home-section">
        <h2>When to stop</h2>
        <StopRules
          stop={stop}
          beyondPainLimit={beyondPainLimit}
          ifItGivesWay={ifItGivesWay}
          listClassName="home-list"
        />
        <p>{defer}</p>
      </div>
    </section>
  );
}
