import { useState } from 'react';
import { Button } from 'react-aria-components';
import { cautionsOf } from '#documents/plan/cautions';
import { kitList, type KitEntry } from '#documents/plan/kitList';
import { perWeekSentence } from '#documents/plan/perWeekSentence';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { videoWishSentence } from '#documents/plan/videoWishSentence';
import { LanguageSwitch } from '#shell/language/LanguageSwitch';
import { HowTo } from '#ui/components/HowTo';
import { KeyWords } from '#ui/components/KeyWords';
import { Message } from '#ui/components/Message';
import { Parts } from '#ui/components/Parts';
import { PlanItems } from '#ui/components/PlanItems';
import { StopRules } from '#ui/components/StopRules';
import { message, messageParts } from '#words/messages/message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { furniture } from '../placing/checks/checkFurniture';
import { HomePage } from './HomePage';

const pages = ['what', 'ready', 'stop'] as const;

/** Before a plan is followed for the first time, one thing a page: what is done, what is needed, when to stop. */
export function PlanPage() {
  const home = useHome();
  const plan = useHomeState((state) => state.plan);
  const steps = useHomeState((state) => state.steps);
  // Coming back from the warning signs, all of it was read.
  const isRead = useHomeStep('overview', ({ isConfirmed }) => isConfirmed);
  const [at, setAt] = useState(isRead ? pages.length - 1 : 0);
  const items = [...new Set(steps.map(({ item }) => item))];
  const page = pages[at];
  const back = () => (at === 0 ? home.back() : setAt(at - 1));
  const confirm = () => {
    home.setConfirmed(true);
    home.confirm();
  };
  if (page === 'stop') {
    return (
      <HomePage
        title={message('overview.when-to-stop')}
        back={back}
        actions={
          <Button className="button button-primary" onPress={confirm}>
            {message('overview.ready')}
          </Button>
        }
      >
        <Stops plan={plan} />
      </HomePage>
    );
  }
  const next = (
    <Button className="button button-primary" onPress={() => setAt(at + 1)}>
      {message('home.continue')}
    </Button>
  );
  if (page === 'ready') {
    return (
      <HomePage title={message('overview.have-ready')} back={back} actions={next}>
        <Kit items={items} footwear={plan?.footwear ?? 'either'} />
      </HomePage>
    );
  }
  return (
    <HomePage
      title={message(plan === null ? 'overview.title-free' : 'overview.title')}
      back={back}
      actions={next}
    >
      <LanguageSwitch />
      {plan !== null && <OtherKeys plan={plan} />}
      {plan !== null && plan.note !== '' && <Message kind="plain">{plan.note}</Message>}
      <PlanItems items={items} more={(item) => <HowTo item={item} isFolded />} />
      {plan !== null && <TherapistWords plan={plan} />}
      {plan !== null && plan.returnKeys.length > 0 && (
        <p>
          <Parts
            of={messageParts('overview.key', {
              count: plan.returnKeys.length,
              words: <KeyWords of={plan.returnKeys} />,
            })}
          />
        </p>
      )}
      {plan !== null && <p className="small soft">{message('overview.for', { patient: plan.patient })}</p>}
    </HomePage>
  );
}

/** Somebody who passes a plan on could put in a key of their own. */
function OtherKeys({ plan: { returnKeys } }: { plan: PlanDocument }) {
  const earlierKeys = useHomeStep('overview', (state) => state.earlierKeys);
  if (earlierKeys === null) return null;
  const hasNew = returnKeys.some((key) => !earlierKeys.includes(key));
  return (
    <Message kind="caution" title={message('overview.other-keys')}>
      {returnKeys.length === 0 ? (
        <p>{message('overview.no-key')}</p>
      ) : (
        <p>
          <Parts
            of={messageParts(hasNew ? 'overview.keys' : 'overview.fewer-keys', {
              earlier: <KeyWords of={earlierKeys} />,
              now: <KeyWords of={returnKeys} />,
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

/** What to have ready; of chair, step and support only the name, since they are asked about before the set. */
function Kit({ items, footwear }: { items: readonly PlanItem[]; footwear: PlanDocument['footwear'] }) {
  const isAsked = ({ need }: KitEntry) => need !== null && furniture.some((one) => one === need);
  return (
    <ul className="home-list">
      {kitList(items, footwear).map((entry) => (
        <li key={entry.name}>{isAsked(entry) ? `${entry.name}.` : entry.sentence}</li>
      ))}
    </ul>
  );
}

function Stops({ plan }: { plan: PlanDocument | null }) {
  const { stop, beyondPainLimit, ifItGivesWay, defer } = cautionsOf(plan);
  return (
    <section className="message message-caution">
      <div className="home-section">
        <StopRules stop={stop} beyondPainLimit={beyondPainLimit} ifItGivesWay={ifItGivesWay} isFolded />
        <p>{defer}</p>
      </div>
    </section>
  );
}
