import { leastFrameRateHz } from '#core/measurement/collectNotes';
import { good, move, notYet, type Check } from './placingFinding';

/**
 * A camera that was fast enough may falter for a moment, Hz: measuring warns by the usual rate of the whole recording.
 * Common practice, no source.
 */
const leastRateHz = { tight: leastFrameRateHz, loose: 10 };
/** With less of the window measured once all was good, pictures are being lost for more than a moment. */
const leastShareToStayGood = 0.5;

/** The first pictures of a camera come unevenly: nothing is inferred from less than this, ms. */
const leastSpanMs = 800;

/** Pictures a second, by the limit at which measuring warns. */
export const checkFrameRate: Check = ({ track, facts, points, obstacle, measuredShare }, wasGood) => {
  const spanMs = (track.timesMs.at(-1) ?? 0) - (track.timesMs[0] ?? 0);
  if (spanMs < leastSpanMs) return notYet;
  const rateHz = Math.round(facts.cameraRateHz ?? points.frameRateHz);
  if (rateHz < leastRateHz[wasGood ? 'loose' : 'tight'])
    return move(
      'The picture is not smooth enough. Switch on more light, and close other apps.',
      'More light',
    );
  if (obstacle === 'frames-missing' && !(wasGood && measuredShare >= leastShareToStayGood))
    return move('The picture keeps stopping. Close other apps on this device.', 'Close apps');
  return good('The picture is smooth.', 'Smooth');
};
