import { Button } from 'react-aria-components';
import { doseWords } from '#documents/plan/itemFacts';
import { itemName } from '#documents/plan/itemName';
import type { PlanDocument } from '#documents/plan/planDocument';
import { usePlanWriting } from '#features/planning/planWritingContext';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { useNavigation } from '#shell/navigation/navigationContext';
import { dayWords } from '#words/dateWords';
import { usePatientsState } from '../patientsContext';
import { dueAndDone, dueWords } from '../rules/dueAndDone';

/** The plan in force with what was due and done, and every earlier one. */
export function PlanCard({ sessions }: { sessions: readonly ListedSession[] }) {
  const plans = usePatientsState((state) => state.plans);
  const given = usePatientsState((state) => state.patient?.plans) ?? [];
  const readAtMs = usePatientsState((state) => state.readAtMs);
  const pauses = usePatientsState((state) => state.patient?.pauses) ?? [];
  const pseudonym = usePatientsState((state) => state.patient?.pseudonym);
  const navigation = useNavigation();
  const writing = usePlanWriting();
  const [inForce, ...earlier] = plans;
  const change = async () => {
    if (pseudonym === undefined) return;
    await writing.writeFor(pseudonym);
    await navigation.show('plan');
  };
  const gone = given.filter(({ id }) => plans.every((plan) => plan.id !== id));
  return (
    <section className="card patient-plans" aria-labelledby="patient-plan-title">
      <div className="patient-card-head">
        <h2 id="patient-plan-title" tabIndex={-1}>
          Plan in force
        </h2>
        <Button className="button button-quiet" onPress={() => void change()}>
          {inForce === undefined ? 'Write a plan' : 'Change this plan'}
        </Button>
      </div>
      {inForce === undefined ? (
        <p className="soft">None was given on this device.</p>
      ) : (
        <>
          <p>
            Given on {dayWords(inForce.createdAt)}
            {inForce.reviewDate !== null && <>, looked at again on {dayWords(inForce.reviewDate)}</>}
          </p>
          <p>
            <strong>{dueWords(dueAndDone(inForce, sessions, pauses, readAtMs))}</strong>
          </p>
          <Items plan={inForce} />
        </>
      )}
      {earlier.length + gone.length > 0 && (
        <details>
          <summary>Earlier plans ({earlier.length + gone.length})</summary>
          {earlier.map((plan) => (
            <div key={plan.id}>
              <h3>{dayWords(plan.createdAt)}</h3>
              <Items plan={plan} />
            </div>
          ))}
          {gone.map(({ id, givenAt }) => (
            <p key={id} className="soft">
              {dayWords(givenAt)}: no longer kept here
            </p>
          ))}
        </details>
      )}
    </section>
  );
}

function Items({ plan }: { plan: PlanDocument }) {
  return (
    <ul className="patient-items small">
      {plan.items.map((item, index) => (
        <li key={index}>
          <strong>{itemName(item)}</strong>: {doseWords(item)}
        </li>
      ))}
    </ul>
  );
}
