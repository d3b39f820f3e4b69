import { Button } from 'react-aria-components';
import { findExercise } from '#core/exercises/exercises';
import { libraryIds } from '#core/exercises/library/libraryIds';
import type { PainfulSide } from '#documents/patient/patientDocument';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';
import { newItem } from '#documents/plan/planDraft';
import { sideChoices } from '../rules/sideChoices';

interface Props {
  /** Which knee of the patient is noted as painful; null where nothing is noted. */
  painful: PainfulSide | null;
  onChoose: (item: PlanItem) => void;
}

/** The library where a plan is still empty: an exercise and its leg by one press. */
export function FirstTask({ painful, onChoose }: Props) {
  const single = sideChoices(painful).filter(({ sides }) => sides.length === 1);
  return (
    <>
      <p className="soft">None yet. Each starts with a suggested dose, which you can change.</p>
      <ul className="plan-first" aria-label="First task">
        {libraryIds.map((id) => {
          const item = newItem(id);
          const name = itemName(item);
          return (
            <li key={id}>
              <span>
                {name} <span className="small soft">{findExercise(id).purpose}</span>
              </span>
              <span className="button-row">
                {single.map(({ id: side, name: leg, sides }) => (
                  <Button
                    key={side}
                    className="button"
                    aria-label={`${name}, ${leg.toLowerCase()}`}
                    onPress={() => onChoose({ ...item, sides })}
                  >
                    {leg}
                  </Button>
                ))}
              </span>
            </li>
          );
        })}
      </ul>
    </>
  );
}
