import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { findEntry } from '../../library/findEntry';
import type { FaultDirection } from '../../library/libraryEntry';
import type { HoldId } from '../../protocol/holds';
import type { TaskId } from '../../protocol/tasks';

const directionWords: Record<FaultDirection, string> = {
  inward: 'Inward',
  outward: 'Outward',
  other: 'Other',
};

/** What the library says of a task, for the therapist. */
export function AboutTask({ id }: { id: TaskId | HoldId }) {
  const { purpose, stages, faults, dose } = findEntry(id);
  return (
    <Disclosure className="plan-about">
      <Heading level={4}>
        <Button slot="trigger" className="button button-quiet">
          Stages, common faults and cues
        </Button>
      </Heading>
      <DisclosurePanel className="plan-about-panel small">
        <p>{purpose}</p>
        <p>
          <strong>From easier to harder:</strong> {stages.join(' ')}
        </p>
        <table>
          <thead>
            <tr>
              <th>Direction</th>
              <th>What is seen</th>
              <th>Cue</th>
            </tr>
          </thead>
          <tbody>
            {faults.map(({ direction, seen, cue }) => (
              <tr key={seen}>
                <td>{directionWords[direction]}</td>
                <td>{seen}</td>
                <td>{cue}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="soft">
          First dose, stages, faults and cues: {dose.source}. What you prescribe comes first.
        </p>
      </DisclosurePanel>
    </Disclosure>
  );
}
