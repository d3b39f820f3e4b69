import type { MissingReason } from '#core/measurement/curve';

/** Why there is no number, and what to change. */
export const reasonWords: Record<MissingReason, { short: string; advice: string }> = {
  'no-person': {
    short: 'nobody seen',
    advice: 'Stand so that the whole body is in the picture, with light from the front.',
  },
  'joint-unseen': {
    short: 'hip, knee or ankle hidden',
    advice: 'Clear what stands in front of the legs, wear clothes that show the knees, and add light.',
  },
  'out-of-picture': {
    short: 'leg out of the picture',
    advice: 'Move the camera back or tilt it so that hips, knees and feet stay in the picture.',
  },
  'tracking-jumped': {
    short: 'somebody else was followed',
    advice: 'Film with one person only in the picture.',
  },
  'frames-missing': {
    short: 'frames missing',
    advice: 'Film again with more light and nothing else running on the device.',
  },
  'thigh-foreshortened': {
    short: 'thigh points at the camera',
    advice: 'Nothing to change: the angle counts only once the thigh is seen at enough of its length.',
  },
  'view-turned': {
    short: 'turned too far from the camera',
    advice: 'Turn the body, or move the camera, until hips and feet face it squarely.',
  },
  'band-too-wide': {
    short: 'too uncertain from this view',
    advice:
      'Face the camera squarely, both feet in the picture, and begin with two easy bends on both legs: they show how you stand to the camera.',
  },
  'no-stance': {
    short: 'not standing on both feet',
    advice:
      'Nothing to change: where the hips stand between the feet counts only with both apart on the floor.',
  },
};
