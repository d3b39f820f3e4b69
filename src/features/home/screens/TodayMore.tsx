import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
import { LanguageSwitch } from '#shell/language/LanguageSwitch';
import { message } from '#words/messages/message';
import { useHome } from '../homeContext';
import { BackgroundProgress } from './BackgroundProgress';
import { CalendarButton } from './CalendarButton';

interface Props {
  plan: PlanDocument;
  onOther: () => void;
  isDisabled: boolean;
}

/** What need not be read every day: the whole plan, and the other ways in. */
export function TodayMore({ plan, onOther, isDisabled }: Props) {
  const home = useHome();
  return (
    <Disclosure className="home-more">
      <Button slot="trigger" className="button button-quiet">
        {message('today.more')}
      </Button>
      <DisclosurePanel className="home-section">
        <BackgroundProgress />
        {plan.howOften !== '' && <p>{plan.howOften}</p>}
        <p className="small soft">{message('today.for', { patient: plan.patient })}</p>
        <LanguageSwitch />
        <div className="button-row">
          <Button
            className="button"
            isDisabled={isDisabled}
            onPress={() => void home.openKeptPlan(plan.id, true)}
          >
            {message('today.whole-plan')}
          </Button>
          <CalendarButton plan={plan} />
          <Button className="button button-quiet" onPress={onOther}>
            {message('today.another')}
          </Button>
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}
