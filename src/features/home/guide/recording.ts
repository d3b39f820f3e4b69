import type { Turn } from './turn';

/** The recording follows the state; effects that make no sense in it are left out. */
export function startRecording({ state, effects }: Turn): void {
  if (state.recording !== 'off') return;
  state.recording = 'on';
  effects.push({ kind: 'record', action: 'start' });
}

export function pauseRecording({ state, effects }: Turn): void {
  if (state.recording !== 'on') return;
  state.recording = 'paused';
  effects.push({ kind: 'record', action: 'pause' });
}

export function resumeRecording({ state, effects }: Turn): void {
  if (state.recording !== 'paused') return;
  state.recording = 'on';
  effects.push({ kind: 'record', action: 'resume' });
}

export function discardRecording({ state, effects }: Turn): void {
  if (state.recording === 'off') return;
  state.recording = 'off';
  effects.push({ kind: 'record', action: 'discard' });
}

/** @param result  index of the result that it belongs to */
export function stopRecording({ state, effects }: Turn, result: number): void {
  if (state.recording === 'off') return;
  state.recording = 'off';
  effects.push({ kind: 'record', action: 'stop', result });
}
