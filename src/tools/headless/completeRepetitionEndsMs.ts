import type { Measurement } from '#core/measurement/measurement';

/** When each complete repetition was over, ms of the recording: back on the seat, or upright again without one. */
export function completeRepetitionEndsMs({ repetitions }: Pick<Measurement, 'repetitions'>): number[] {
  return repetitions
    .filter(({ completeness }) => completeness === 'complete')
    .map(({ events }) => events.seatContactMs ?? events.endMs);
}
