import type { MeasurementNote } from '#core/measurement/measurement';
import { otherSide } from '#core/protocol/side';
import { reasonWords } from './reasonWords';

/** A note on a recording as a sentence that says what, why, and what to do. */
export function noteSentence(note: MeasurementNote): string {
  switch (note.kind) {
    case 'no-person':
      return (
        `No person was found in this video (in ${note.framesWithPerson} of ${note.frames} frames only), ` +
        `so nothing could be measured. ${reasonWords('no-person').advice}`
      );
    case 'no-repetitions':
      return (
        'No repetition was found: the hips never moved up and down enough. ' +
        'Check that the right task is chosen and that the video shows it from start to end.'
      );
    case 'legs-not-seen':
      return (
        `For most of the video the working leg can’t be measured: ${reasonWords(note.reason).short}. ` +
        reasonWords(note.reason).advice
      );
    case 'somebody-else':
      return (
        (note.frames === 1
          ? 'In one frame somebody else was followed; it is left out. '
          : `In ${note.frames} frames somebody else was followed; they are left out. `) +
        reasonWords('tracking-jumped').advice
      );
    case 'not-facing':
      return note.facing === 'back'
        ? 'The person is filmed from behind, where inward looks like outward, so no angle is given. ' +
            'Film again from the front.'
        : 'The picture lies on its side or stands on its head, so no angle is given. ' +
            'Turn the video upright, or film again with the camera upright.';
    case 'side-doubtful':
      return (
        `The ${note.side} leg was chosen, but it looks as if the ${otherSide(note.side)} leg is working. ` +
        'Check the side; switching it measures again at once.'
      );
    case 'view-turned':
      return (
        `The body is turned about ${Math.round(Math.abs(note.yawDeg))}° (give or take ${Math.round(note.sdDeg * 2)}°) ` +
        `to its ${note.yawDeg > 0 ? 'left' : 'right'}, too far from square: from here a bent knee looks inward or ` +
        `outward whatever it does, so no angle is given. ${reasonWords('view-turned').advice}`
      );
    case 'few-frames':
      return (
        `The video has ${fewFrames(note.frameRateHz)}, so short peaks may be missed. ` +
        'Film with 25 or more, in good light.'
      );
  }
}

function fewFrames(rateHz: number): string {
  const rate = Math.round(rateHz);
  return rate < 2 ? 'not even two frames a second' : `only ${rate} frames a second`;
}
