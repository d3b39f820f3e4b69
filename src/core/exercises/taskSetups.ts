import type { HoldId } from './holds';
import type { Need } from './needs';
import { otherSide, type Side } from '../protocol/side';
import type { TaskId } from './tasks';

/** How to get ready for a task alone; in the sentences, `{side}` is the working side and `{other}` the other one. */
export interface TaskSetup {
  needs: readonly Need[];
  /** What to put where, and how to stand, in order. */
  setUp: readonly string[];
  /** Where the camera stands; null where none is needed. */
  camera: string | null;
  /** How a set begins; 'as-shown' where nothing of it can be told from outside. */
  start: 'seated' | 'standing' | 'as-shown';
  /** Said before the countdown. */
  startLine: string;
  /**
   * Whether it is begun with two easy two-legged bends: where one foot is stood on, its own movement tells little of how
   * the body is turned (docs/view.md).
   */
  easyBends: boolean;
}

const cameraInFront =
  'Put the camera two to three metres in front of you, upright and level, at the height of your hips or a little ' +
  'below. Both feet, and your head, must be in the picture.';
const faceCamera = 'Face the camera squarely: both hips and both shoulders equally far from it.';
const chairPlace = 'The chair stands with its back to the wall, its front to the camera.';

/** Common practice, no source. How deep, how high and how fast is the treating professional's to say. */
const setups: Record<TaskId | HoldId, TaskSetup> = {
  'split-stance-sit-to-stand': {
    needs: ['chair', 'clear-floor', 'support'],
    setUp: [
      chairPlace,
      'Sit on its front half, both feet on the floor.',
      'Put your {side} foot in front and your {other} foot a little behind it.',
      faceCamera,
    ],
    camera: cameraInFront,
    start: 'seated',
    startLine: 'Sit down, {side} foot in front.',
    easyBends: false,
  },
  'single-leg-sit-to-stand': {
    needs: ['chair', 'clear-floor', 'support'],
    setUp: [
      chairPlace,
      'Sit on its front half, both feet on the floor.',
      'Lift your {other} foot just off the floor; put it down again whenever you need it.',
      faceCamera,
    ],
    camera: cameraInFront,
    start: 'seated',
    startLine: 'Sit down, and get ready on your {side} leg.',
    easyBends: false,
  },
  'single-leg-squat': {
    needs: ['clear-floor', 'support'],
    setUp: [
      'Stand with what you hold on to beside you, not in front.',
      'Stand on your {side} leg and bend the {other} knee so that the foot is behind you.',
      faceCamera,
    ],
    camera: cameraInFront,
    start: 'standing',
    startLine: 'Stand on your {side} leg.',
    easyBends: true,
  },
  'sliding-leg-squat': {
    needs: ['clear-floor', 'support', 'slide'],
    setUp: [
      'Stand with what you hold on to beside you, not in front.',
      'Keep your {side} foot planted; the {other} foot rests on the cloth and slides.',
      faceCamera,
    ],
    camera: cameraInFront,
    start: 'standing',
    startLine: 'Stand with your weight on your {side} leg.',
    easyBends: true,
  },
  'lateral-step-down': {
    needs: ['step', 'clear-floor', 'support'],
    setUp: [
      'Put the step where you can hold on to something beside it.',
      'Stand with your {side} foot on the step, close to its edge, and the {other} foot hanging beside it.',
      faceCamera,
    ],
    camera: cameraInFront,
    start: 'standing',
    startLine: 'Stand on the step with your {side} leg.',
    easyBends: true,
  },
  'hip-abduction-on-bent-leg': {
    needs: ['clear-floor', 'support'],
    setUp: [
      'Stand with what you hold on to on your {side} side, within reach.',
      'Stand on your {side} leg with the knee a little bent; the {other} leg will move out to the side.',
      faceCamera,
    ],
    camera: cameraInFront,
    start: 'standing',
    startLine: 'Stand on your {side} leg, knee a little bent.',
    easyBends: true,
  },
  'two-legged-bend': {
    needs: ['clear-floor', 'support'],
    setUp: ['Stand on both feet, hip-wide, with what you hold on to beside you.', faceCamera],
    camera: cameraInFront,
    start: 'standing',
    startLine: 'Stand on both feet.',
    easyBends: false,
  },
  'quad-press-hold': {
    needs: ['ball', 'clear-floor'],
    setUp: ['Get into the position that you were shown, with the ball behind your {side} thigh.'],
    camera: null,
    start: 'as-shown',
    startLine: 'Get into position, ball behind your {side} thigh.',
    easyBends: false,
  },
};

/** What a task needs, with its sentences for one working side. */
export function findSetup(task: TaskId | HoldId, side: Side): TaskSetup {
  const setup = setups[task];
  const forSide = (text: string) => text.replaceAll('{side}', side).replaceAll('{other}', otherSide(side));
  return { ...setup, setUp: setup.setUp.map(forSide), startLine: forSide(setup.startLine) };
}
