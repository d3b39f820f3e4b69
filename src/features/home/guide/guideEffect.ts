import type { TaskId } from '#core/exercises/exercises';
import type { SpokenLine } from '#device/sound/sound';
import type { ToneKind } from '#device/sound/toneKind';

/** An effect that the guide asks for. */
export type GuideEffect =
  /** The caption is the written form of what is spoken. */
  | ({ kind: 'say' } & SpokenLine)
  | { kind: 'tone'; tone: ToneKind }
  /** 'discard' ends a recording without saving it. */
  | { kind: 'record'; action: 'start' | 'pause' | 'resume' | 'discard' }
  /** Ends a recording and saves it; it belongs to the result with this index in the state. */
  | { kind: 'record'; action: 'stop'; result: number }
  /** Restart counting repetitions of this task from here; easy bends are counted as a task of their own. */
  | { kind: 'count'; action: 'start'; task: TaskId }
  | { kind: 'count'; action: 'stop' };
