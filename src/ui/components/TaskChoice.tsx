import { taskIds, type TaskId } from '#core/exercises/exercises';
import { exerciseName } from '#words/exerciseWords';
import { Choice } from './Choice';

interface Props {
  value: TaskId;
  onChange: (task: TaskId) => void;
  label?: string;
  isLabelHidden?: boolean;
}

/** Which task the video shows. */
export function TaskChoice({ value, onChange, label = 'Task', isLabelHidden = false }: Props) {
  const options = taskIds.map((id) => ({ id, name: exerciseName(id) }));
  return (
    <Choice label={label} options={options} value={value} onChange={onChange} isLabelHidden={isLabelHidden} />
  );
}
