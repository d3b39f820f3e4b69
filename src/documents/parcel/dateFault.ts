import type { SessionDocument } from '../session/sessionDocument';

/** Clocks of two devices may differ by a time zone that was set wrongly. */
const mostAheadMs = 24 * 3_600_000;
/** Before this program existed. */
const earliestMs = Date.UTC(2020, 0, 1);

/**
 * @param others  more times of the same parcel, ISO 8601
 * @returns  what is wrong with the times of a session that was sent; null where nothing is
 */
export function dateFault(
  { startedAt, endedAt }: Pick<SessionDocument, 'startedAt' | 'endedAt'>,
  others: readonly string[],
  nowMs: number,
): string | null {
  const times = [startedAt, ...(endedAt === null ? [] : [endedAt]), ...others].map((time) =>
    Date.parse(time),
  );
  const isBeyond = times.some((time) => time < earliestMs || time > nowMs + mostAheadMs);
  if (!isBeyond) return null;
  return 'Its date lies in the future, or before 2020. Set the clocks of both devices, and ask the patient to record it again.';
}
