import { leastFrameRateHz } from '#core/measurement/collectNotes';
import { message } from '#words/messages/message';
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
  if (spanMs < leastSpanMs) return notYet();
  const rateHz = Math.round(facts.cameraRateHz ?? points.frameRateHz);
  if (rateHz < leastRateHz[wasGood ? 'loose' : 'tight'])
    return move(message('placing.not-smooth'), message('placing.more-light.short'));
  if (obstacle === 'frames-missing' && !(wasGood && measuredShare >= leastShareToStayGood))
    return move(message('placing.keeps-stopping'), message('placing.keeps-stopping.short'));
  return good(message('placing.smooth'), message('placing.smooth.short'));
};
