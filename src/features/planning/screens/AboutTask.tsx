import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { findExercise, type Exercise, type ExerciseId } from '#core/exercises/exercises';
import type { FaultDirection, Phase } from '#core/exercises/library/fault';
import { stagesFor } from '#documents/library/stages';
import { MeasureLimitSource } from '#ui/components/MeasureLimits';
import { useLibraryState } from '../libraryContext';

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
export function AboutTask({ id }: { id: ExerciseId }) {
  const exercise = findExercise(id);
  const { purpose, faults, dose } = exercise;
  const stages = stagesFor(
    id,
    useLibraryState((state) => state.stages),
  );
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
          <strong>From easier to harder:</strong> {stages.map(({ words }) => words).join(' ')}
        </p>
        <table>
          <thead>
            <tr>
              <th>Direction</th>
              <th>When</th>
              <th>What you see</th>
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
          <strong>First dose:</strong> {doseSentence(exercise)}
        </p>
        {exercise.kind === 'task' && (
          <p>
            <strong>Starting limits of the knee angle.</strong> <MeasureLimitSource measure="knee-angle" />
          </p>
        )}
        <p className="soft">
          First dose, stages, faults and cues: {dose.source}. What you prescribe comes first.
        </p>
      </DisclosurePanel>
    </Disclosure>
  );
}

function doseSentence({ kind, dose }: Exercise): string {
  if (kind === 'hold') return `${dose.sets} × ${dose.holds.count} holds of ${dose.holds.seconds} s.`;
  const { sets, repetitions, worksUpTo } = dose;
  const first = `${sets} × ${repetitions}.`;
  if (worksUpTo === null) return first;
  const { min, max } = worksUpTo;
  return (
    `${first} Add repetitions while each stays in the lane and the pain within its limit, up to ${min} to ${max} good ` +
    'ones in a row; then progress to the next stage.'
  );
}
