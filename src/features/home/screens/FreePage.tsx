import { useState } from 'react';
import { Button } from 'react-aria-components';
import { findTask, type TaskId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import { planRanges } from '#documents/plan/planRanges';
import { SideChoice } from '#ui/components/SideChoice';
import { TaskChoice } from '#ui/components/TaskChoice';
import { useHome } from '../homeContext';
import { HomePage } from './HomePage';
import { Stepper } from './Stepper';

/** A recording without a plan: which exercise, which leg, how often. */
export function FreePage({ onBack }: { onBack: () => void }) {
  const home = useHome();
  const [task, setTask] = useState<TaskId>('split-stance-sit-to-stand');
  const [side, setSide] = useState<Side | null>(null);
  const [sets, setSets] = useState(1);
  const [repetitions, setRepetitions] = useState(6);
  const [wasPressed, setWasPressed] = useState(false);
  const goOn = () => {
    setWasPressed(true);
    if (side !== null) void home.startFree({ task, side, sets, repetitions });
  };
  return (
    <HomePage
      title="What do you want to record?"
      leave={{ words: 'Back', onPress: onBack }}
      actions={
        <Button className="button button-primary" onPress={goOn}>
          Continue
        </Button>
      }
    >
      <div className="free-form">
        <TaskChoice value={task} onChange={setTask} />
        <SideChoice
          value={side}
          onChange={setSide}
          hint={findTask(task).sideHint}
          error={wasPressed && side === null ? 'Choose the working side first.' : null}
        />
        <div className="free-counts">
          <Stepper
            label="Repetitions"
            value={repetitions}
            range={planRanges.repetitions}
            onChange={setRepetitions}
          />
          <Stepper label="Sets" value={sets} range={planRanges.sets} onChange={setSets} />
        </div>
      </div>
      <p className="soft">
        Do only what your physiotherapist or doctor has shown you, and only as often as they said.
      </p>
    </HomePage>
  );
}
