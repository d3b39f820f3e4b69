import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { TaskId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import { planRanges } from '#documents/plan/planRanges';
import { SideChoice } from '#ui/components/SideChoice';
import { TaskChoice } from '#ui/components/TaskChoice';
import { sideHint } from '#words/exerciseWords';
import { message } from '#words/messages/message';
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
      title={message('free.title')}
      back={onBack}
      actions={
        <Button className="button button-primary" onPress={goOn}>
          {message('home.continue')}
        </Button>
      }
    >
      <div className="free-form">
        <TaskChoice label={message('free.task')} value={task} onChange={setTask} />
        <SideChoice
          value={side}
          onChange={setSide}
          hint={sideHint(task)}
          own={{ label: message('free.side'), hint: message('free.side.hint', { hint: sideHint(task) }) }}
          error={wasPressed && side === null ? message('free.side-missing') : null}
        />
        <div className="free-counts">
          <Stepper
            label={message('free.repetitions')}
            value={repetitions}
            range={planRanges.repetitions}
            onChange={setRepetitions}
          />
          <Stepper label={message('free.sets')} value={sets} range={planRanges.sets} onChange={setSets} />
        </div>
      </div>
      <p className="soft">{message('free.caution')}</p>
    </HomePage>
  );
}
