import type { HandedOver } from '../store/handOver/packHandOver';

/** '2 sessions, 3 sets, 1 plan'. */
export function handedOverWords({ sessions, recordings, plans }: HandedOver): string {
  const count = (number: number, one: string) => `${number} ${one}${number === 1 ? '' : 's'}`;
  return [count(sessions, 'session'), count(recordings, 'set'), count(plans, 'plan')].join(', ');
}
