import { findTask, taskIds, type TaskId } from '#core/exercises/exercises';
import { Choice } from './Choice';

interface Props {
  value: TaskId;
  onChange: (task: TaskId) => void;
  isLabelHidden?: boolean;
}

const options = taskIds.map((id) => ({ id, name: findTask(id).name }));

/** Which task the video shows. */
export function TaskChoice({ value, onChange, isLabelHidden = false }: Props) {
  return (
    <Choice label="Task" options={options} value={value} onChange={onChange} isLabelHidden={isLabelHidden} />
  );
}
