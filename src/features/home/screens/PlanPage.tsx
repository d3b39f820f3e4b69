import { useState } from 'react';
import { Button } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { HowTo } from '#ui/components/HowTo';
import { KitList } from '#ui/components/KitList';
import { Message } from '#ui/components/Message';
import { PlanItems } from '#ui/components/PlanItems';
import { RedFlagList } from '#ui/components/RedFlagList';
import { StopRules } from '#ui/components/StopRules';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { HomePage } from './HomePage';
import { RedFlagPage } from './RedFlagPage';

/** What will be done, what is needed for it, and when not to do it; ends with a plain confirmation. */
export function PlanPage() {
  const home = useHome();
  const plan = useHomeState((state) => state.plan);
  const steps = useHomeState((state) => state.steps);
  const hasFlag = useHomeStep('overview', ({ redFlag }) => redFlag !== null);
  const [isAsking, setIsAsking] = useState(false);
  if (isAsking || hasFlag) return <RedFlagPage onBack={() => setIsAsking(false)} />;

  const items = [...new Set(steps.map(({ item }) => item))];
  const confirm = () => {
    home.setConfirmed(true);
    home.confirm();
  };
  return (
    <HomePage
      title={plan === null ? 'What you are going to do' : `Hello ${plan.patient}, this is for today`}
      leave={{ words: 'Back', onPress: () => home.back() }}
    >
      {plan !== null && plan.note !== '' && <Message kind="plain">{plan.note}</Message>}
      <PlanItems items={items} more={(item) => <HowTo item={item} />} />
      {plan !== null && <TherapistWords plan={plan} />}
      <Kit items={items} plan={plan} />
      <Stops plan={plan} />
      <section className="message message-problem">
        <div className="home-section">
          <h2>Do not exercise today if</h2>
          <RedFlagList className="home-list" />
        </div>
      </section>
      <section className="home-section home-end">
        <p>
          <strong>Before you continue:</strong> have you read this, is everything ready, and does none of
          these signs apply to you today?
        </p>
        <Button className="button button-primary" onPress={confirm}>
          Yes, ready, and none applies
        </Button>
        <Button className="button" onPress={() => setIsAsking(true)}>
          One of the signs applies to me
        </Button>
      </section>
    </HomePage>
  );
}

function TherapistWords({ plan: { words, howOften } }: { plan: PlanDocument }) {
  if (words === '' && howOften === '') return null;
  return (
    <section className="home-section">
      <h2>From your therapist</h2>
      {words !== '' && <blockquote className="plan-words">{words}</blockquote>}
      {howOften !== '' && <p>{howOften}</p>}
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
  const { stop, beyondPainLimit, defer } = cautionsOf(plan);
  return (
    <section className="message message-caution">
      <div className="home-section">
        <h2>When to stop</h2>
        <StopRules stop={stop} beyondPainLimit={beyondPainLimit} listClassName="home-list" />
        <p>{defer}</p>
      </div>
    </section>
  );
}
