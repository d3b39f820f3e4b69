import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
import { dayWords } from '#words/dateWords';
import { useHome, useHomeState } from '../homeContext';
import type { LastTime } from '../rules/lastTime';
import { BackgroundProgress } from './BackgroundProgress';
import { CalendarButton } from './CalendarButton';
import { setWords } from './setWords';

interface Props {
  plan: PlanDocument;
  onOther: () => void;
  isDisabled: boolean;
}

/** What need not be read every day: how last time went, the whole plan, and the other ways in. */
export function TodayMore({ plan, onOther, isDisabled }: Props) {
  const home = useHome();
  const last = useHomeState(({ today }) => today.last);
  return (
    <Disclosure className="home-more">
      <Button slot="trigger" className="button button-quiet">
        More
      </Button>
      <DisclosurePanel className="home-section">
        <BackgroundProgress />
        {last !== null && <p>{lastTimeSentence(last)}</p>}
        {plan.howOften !== '' && <p>{plan.howOften}</p>}
        <p className="small soft">For {plan.patient}</p>
        <div className="button-row">
          <Button
            className="button"
            isDisabled={isDisabled}
            onPress={() => void home.openKeptPlan(plan.id, true)}
          >
            Read the whole plan
          </Button>
          <CalendarButton plan={plan} />
          <Button className="button button-quiet" onPress={onOther}>
            Another plan, or none
          </Button>
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}

function lastTimeSentence({ startedAt, sets, painDuring, inLine }: LastTime): string {
  const pain = painDuring === null ? '' : `, pain ${painDuring} at most`;
  const line =
    inLine === null ? '' : ` About ${inLine.about} of ${inLine.of} repetitions stayed over the foot.`;
  return `Last time, ${dayWords(startedAt)}: ${setWords(sets)}${pain}.${line}`;
}
