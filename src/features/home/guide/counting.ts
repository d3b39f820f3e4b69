import type { TaskId } from '#core/exercises/exercises';
import type { Turn } from './turn';

export function startCounting({ state, effects }: Turn, task: TaskId): void {
  state.isCounting = true;
  effects.push({ kind: 'count', action: 'start', task });
}

export function stopCounting({ state, effects }: Turn): void {
  if (!state.isCounting) return;
  state.isCounting = false;
  effects.push({ kind: 'count', action: 'stop' });
}
