import type { TrueRepetition } from './clipTruth';
import type { RecordingRepetition } from './readPeak';

/** The moments of a repetition by their names in a truth file. */
export const eventNames = ['start', 'liftOff', 'bottom', 'top', 'topEnd', 'touchDown', 'end'] as const;
export type EventName = (typeof eventNames)[number];

/**
 * How much later than in truth each event was found, seconds; events that either side does not have are left out.
 *
 * In tasks that dip, the truth's `top` is the standing at the end, which is found as the end; it is not
 * counted twice.
 */
export function timingErrors(
  truth: TrueRepetition,
  { events }: RecordingRepetition,
): Partial<Record<EventName, number>> {
  const foundMs: Record<EventName, number | null> = {
    start: events.startMs,
    liftOff: events.seatOffMs,
    bottom: events.bottomMs,
    top: events.topMs,
    topEnd: events.topEndMs,
    touchDown: events.seatContactMs,
    end: events.endMs,
  };
  const errors: Partial<Record<EventName, number>> = {};
  for (const name of eventNames) {
    const [trueS, atMs] = [truth[name], foundMs[name]];
    if (trueS !== null && atMs !== null) errors[name] = atMs / 1000 - trueS;
  }
  return errors;
}
