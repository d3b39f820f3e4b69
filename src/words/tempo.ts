import type { Task } from '#core/exercises/exercises';
import type { MeasuredRepetition } from '#core/measurement/measurement';

/** One part of a repetition with its length; null where its start or end was not seen. */
export interface TempoPart {
  name: 'rise' | 'top' | 'lowering' | 'down' | 'up' | 'out' | 'back';
  seconds: number | null;
}

/** How long the parts of a repetition took: rise, top and lowering, down and up, or out and back. */
export function tempo({ events }: Pick<MeasuredRepetition, 'events'>, shape: Task['shape']): TempoPart[] {
  if (shape !== 'rise') {
    const [there, back] = shape === 'dip' ? (['down', 'up'] as const) : (['out', 'back'] as const);
    return [
      { name: there, seconds: between(events.startMs, events.bottomMs) },
      { name: back, seconds: between(events.bottomMs, events.endMs) },
    ];
  }
  return [
    { name: 'rise', seconds: between(events.seatOffMs, events.topMs) },
    { name: 'top', seconds: between(events.topMs, events.topEndMs) },
    { name: 'lowering', seconds: between(events.topEndMs, events.seatContactMs) },
  ];
}

/** Tempo in short: '0.7 / 0.6 / 1.2 s', with a dash for what was not seen. */
export function formatTempo(parts: readonly TempoPart[]): string {
  return `${parts.map(({ seconds }) => (seconds === null ? '–' : seconds.toFixed(1))).join(' / ')} s`;
}

function between(fromMs: number | null, toMs: number | null): number | null {
  return fromMs === null || toMs === null ? null : (toMs - fromMs) / 1000;
}
