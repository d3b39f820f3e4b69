import { Button } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import { perWeekSentence } from '#documents/plan/perWeekSentence';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { videoWishSentence } from '#documents/plan/videoWishSentence';
import { LanguageSwitch } from '#shell/language/LanguageSwitch';
import { HowTo } from '#ui/components/HowTo';
import { KeyWords } from '#ui/components/KeyWords';
import { KitList } from '#ui/components/KitList';
import { Message } from '#ui/components/Message';
import { Parts } from '#ui/components/Parts';
import { PlanItems } from '#ui/components/PlanItems';
import { StopRules } from '#ui/components/StopRules';
import { message, messageParts } from '#words/messages/message';
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
      title={message(plan === null ? 'overview.title-free' : 'overview.title')}
      leave={{ words: message('home.back'), onPress: () => home.back() }}
    >
      <LanguageSwitch />
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
          <Parts of={messageParts('overview.key', { words: <KeyWords of={plan.returnKey} /> })} />
        </p>
      )}
      {plan !== null && <p className="small soft">{message('overview.for', { patient: plan.patient })}</p>}
      <section className="home-section home-end">
        <p>
          <Parts
            of={messageParts('overview.confirm', { before: <strong>{message('overview.before')}</strong> })}
          />
        </p>
        <Button className="button button-primary" onPress={confirm}>
          {message('overview.ready')}
        </Button>
      </section>
    </HomePage>
  );
}

/** Somebody who passes a plan on could put in a key of their own. */
function OtherKey({ earlierKey, returnKey }: { earlierKey: string; returnKey: string | null }) {
  return (
    <Message kind="caution" title={message('overview.other-key')}>
      {returnKey === null ? (
        <p>{message('overview.no-key')}</p>
      ) : (
        <p>
          <Parts
            of={messageParts('overview.keys', {
              earlier: <KeyWords of={earlierKey} />,
              now: <KeyWords of={returnKey} />,
            })}
          />
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
      <h2>{message('overview.from-therapist')}</h2>
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
      <h2>{message('overview.have-ready')}</h2>
      <KitList items={items} footwear={plan?.footwear ?? 'either'} />
    </section>
  );
}

function Stops({ plan }: { plan: PlanDocument | null }) {
  const { stop, beyondPainLimit, ifItGivesWay, defer } = cautionsOf(plan);
  return (
    <section className="message message-caution">
      <div className="home-section">
        <h2>{message('overview.when-to-stop')}</h2>
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
