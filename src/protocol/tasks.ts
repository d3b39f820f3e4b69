/** Tasks whose repetitions can be found and judged. */
export const taskIds = [
  'split-stance-sit-to-stand',
  'single-leg-squat',
  'sliding-leg-squat',
  'lateral-step-down',
] as const;
export type TaskId = (typeof taskIds)[number];

export interface Task {
  id: TaskId;
  /** As it stands on screens. */
  name: string;
  /**
   * Where a repetition starts and ends, and where it turns:
   * 'rise': seated, up, seated again; 'dip': standing, down, standing again.
   */
  shape: 'rise' | 'dip';
  /** How the working foot can be told from the other: it stands nearer to the camera, or it moves less. */
  workingFoot: 'nearer' | 'stiller';
  /** How the working side is told, one sentence. */
  sideHint: string;
}

const tasks: Record<TaskId, Task> = {
  'split-stance-sit-to-stand': {
    id: 'split-stance-sit-to-stand',
    name: 'Split-stance sit-to-stand',
    shape: 'rise',
    workingFoot: 'nearer',
    sideHint: 'The working leg is the one whose foot is in front.',
  },
  'single-leg-squat': {
    id: 'single-leg-squat',
    name: 'Single-leg squat',
    shape: 'dip',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the one that is stood on.',
  },
  'sliding-leg-squat': {
    id: 'sliding-leg-squat',
    name: 'Sliding-leg squat',
    shape: 'dip',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the planted one; the other slides.',
  },
  'lateral-step-down': {
    id: 'lateral-step-down',
    name: 'Lateral step-down',
    shape: 'dip',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the one on the step.',
  },
};

export function findTask(id: TaskId): Task {
  return tasks[id];
}
