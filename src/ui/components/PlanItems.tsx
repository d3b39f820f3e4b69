import './planItems.css';
import type { ReactNode } from 'react';
import { doseWords, itemFacts } from '#documents/plan/itemFacts';
import { itemName } from '#documents/plan/itemName';
import type { PlanItem } from '#documents/plan/planDocument';

interface Props {
  items: readonly PlanItem[];
  /** What else to say about an item. */
  more?: (item: PlanItem) => ReactNode;
}

/** What is to be done, in order. */
export function PlanItems({ items, more }: Props) {
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
            {more?.(item)}
          </div>
        </li>
      ))}
    </ol>
  );
}
