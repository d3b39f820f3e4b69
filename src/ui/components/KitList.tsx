import { kitList } from '#documents/plan/kitList';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';

interface Props {
  items: readonly PlanItem[];
  footwear: PlanDocument['footwear'];
}

/** What to have ready for these tasks, each with what to check. */
export function KitList({ items, footwear }: Props) {
  return (
    <dl className="plan-kit">
      {kitList(items, footwear).map(({ name, sentence }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{sentence}</dd>
        </div>
      ))}
    </dl>
  );
}
