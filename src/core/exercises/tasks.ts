/** Tasks whose repetitions can be found and judged. */
export const taskIds = [
  'split-stance-sit-to-stand',
  'single-leg-sit-to-stand',
  'single-leg-squat',
  'sliding-leg-squat',
  'lateral-step-down',
  'hip-abduction-on-bent-leg',
  'two-legged-bend',
] as const;
export type TaskId = (typeof taskIds)[number];

/** What in a task tells how far the body is turned from the camera; see the view room. */
export type ViewSign = 'thighs' | 'feet' | 'stance-foot' | 'free-shank';

export interface Task {
  id: TaskId;
  /** As it stands on screens. */
  name: string;
  /**
   * Where a repetition starts and ends, and where it turns:
   * 'rise': seated, up, seated again; 'dip': standing, down, standing again; 'reach': feet together, the free foot
   * out to the side, together again.
   */
  shape: 'rise' | 'dip' | 'reach';
  /** How the working foot can be told from the other: it stands nearer to the camera, it moves less, or it can't. */
  workingFoot: 'nearer' | 'stiller' | 'either';
  /** How the working side is told, one sentence. */
  sideHint: string;
  /** Whether the other foot stays on the floor, standing or sliding. */
  onBothFeet: boolean;
  /** In the order of trust. */
  viewSigns: readonly ViewSign[];
}

const tasks: Record<TaskId, Task> = {
  'split-stance-sit-to-stand': {
    id: 'split-stance-sit-to-stand',
    name: 'Split-stance sit-to-stand',
    shape: 'rise',
    workingFoot: 'nearer',
    sideHint: 'The working leg is the one whose foot is in front.',
    onBothFeet: true,
    viewSigns: ['thighs', 'feet'],
  },
  'single-leg-sit-to-stand': {
    id: 'single-leg-sit-to-stand',
    name: 'Single-leg sit-to-stand',
    shape: 'rise',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the one whose foot stays on the floor.',
    onBothFeet: false,
    viewSigns: ['thighs', 'stance-foot'],
  },
  'single-leg-squat': {
    id: 'single-leg-squat',
    name: 'Single-leg squat',
    shape: 'dip',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the one that is stood on.',
    onBothFeet: false,
    viewSigns: ['free-shank', 'stance-foot'],
  },
  'sliding-leg-squat': {
    id: 'sliding-leg-squat',
    name: 'Sliding-leg squat',
    shape: 'dip',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the planted one; the other slides.',
    onBothFeet: true,
    viewSigns: ['feet', 'stance-foot'],
  },
  'lateral-step-down': {
    id: 'lateral-step-down',
    name: 'Lateral step-down',
    shape: 'dip',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the one on the step.',
    onBothFeet: false,
    viewSigns: ['stance-foot'],
  },
  'hip-abduction-on-bent-leg': {
    id: 'hip-abduction-on-bent-leg',
    name: 'Hip abduction on a bent stance leg',
    shape: 'reach',
    workingFoot: 'stiller',
    sideHint: 'The working leg is the bent one that is stood on; the other moves out to the side.',
    onBothFeet: false,
    viewSigns: ['stance-foot'],
  },
  'two-legged-bend': {
    id: 'two-legged-bend',
    name: 'Two-legged bend',
    shape: 'dip',
    workingFoot: 'either',
    sideHint: 'Both legs work; the side says which knee is judged.',
    onBothFeet: true,
    viewSigns: ['thighs', 'feet'],
  },
};

export function findTask(id: TaskId): Task {
  return tasks[id];
}
