import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { findEntry } from '#core/exercises/library/findEntry';
import type { DefaultDose, FaultDirection, Phase } from '#core/exercises/library/libraryEntry';
import type { HoldId } from '#core/exercises/holds';
import { MeasureLimitSource } from '#ui/components/MeasureLimits';
import { taskIds, type TaskId } from '#core/exercises/tasks';

const directionWords: Record<FaultDirection, string> = {
  inward: 'Inward',
  outward: 'Outward',
  other: 'Other',
};

const phaseWords: Record<Phase, string> = {
  'setting-up': 'setting up',
  going: 'on the way',
  turning: 'at the turn',
  'coming-back': 'on the way back',
};

/** What the library says of a task, for the therapist. */
export function AboutTask({ id }: { id: TaskId | HoldId }) {
  const { purpose, stages, faults, dose } = findEntry(id);
  const isMeasured = taskIds.some((task) => task === id);
  return (
    <Disclosure className="plan-about">
      <Heading level={4}>
        <Button slot="trigger" className="button button-quiet">
          Stages, faults, dose and limits
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
              <th>When</th>
              <th>What is seen</th>
              <th>Cue</th>
            </tr>
          </thead>
          <tbody>
            {faults.map(({ direction, phases, seen, cue }) => (
              <tr key={seen}>
                <td>{directionWords[direction]}</td>
                <td>{phases.map((phase) => phaseWords[phase]).join(', ')}</td>
                <td>{seen}</td>
                <td>‘{cue}’</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p>
          <strong>First dose:</strong> {doseSentence(dose)}
        </p>
        {isMeasured && (
          <p>
            <strong>Limits of the knee angle at first.</strong> <MeasureLimitSource measure="knee-angle" />
          </p>
        )}
        <p className="soft">
          First dose, stages, faults and cues: {dose.source}. What you prescribe comes first.
        </p>
      </DisclosurePanel>
    </Disclosure>
  );
}

function doseSentence({ sets, repetitions, holds, worksUpTo }: DefaultDose): string {
  if (holds !== null) return `${sets} × ${holds.count} holds of ${holds.seconds} s.`;
  const first = `${sets} × ${repetitions}.`;
  if (worksUpTo === null) return first;
  const { min, max } = worksUpTo;
  return (
    `${first} Add repetitions while each stays in the lane and the pain within its limit, up to ${min} to ${max} good ` +
    'ones in a row; then go on to the next stage.'
  );
}
