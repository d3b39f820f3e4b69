import type { ToneKind } from '#device/sound/toneKind';
import type { TaskId } from '#core/exercises/exercises';

/** What the guide wants done. */
export type GuideEffect =
  /** 'now' ends what is being said; 'after' waits for it. The caption stands in writing for what is spoken. */
  | { kind: 'say'; line: string; caption: string; when: 'now' | 'after' }
  | { kind: 'tone'; tone: ToneKind }
  /** 'discard' ends a recording of which nothing is kept. */
  | { kind: 'record'; action: 'start' | 'pause' | 'resume' | 'discard' }
  /** Ends a recording that is kept; it belongs to the result with this index in the state. */
  | { kind: 'record'; action: 'stop'; result: number }
  /** Count repetitions of this task from here, anew; easy bends are counted as a task of their own. */
  | { kind: 'count'; action: 'start'; task: TaskId }
  | { kind: 'count'; action: 'stop' };
