import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
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
        More
      </Button>
      <DisclosurePanel className="home-section">
        <BackgroundProgress />
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
