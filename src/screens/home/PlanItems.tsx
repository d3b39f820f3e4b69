import { itemName } from '../../plan/itemName';
import type { PlanItem } from '../../plan/planDocument';
import { doseWords, itemFacts } from './itemFacts';

/** What is to be done, in order. */
export function PlanItems({ items }: { items: readonly PlanItem[] }) {
  return (
    <ol className="plan-items">
      {items.map((item, index) => (
        <li key={index}>
          <div>
            <h3>{itemName(item)}</h3>
            <p className="plan-dose">{doseWords(item)}</p>
            {itemFacts(item).map((fact) => (
              <p key={fact} className="soft">
                {fact}
              </p>
            ))}
          </div>
        </li>
      ))}
    </ol>
  );
}
