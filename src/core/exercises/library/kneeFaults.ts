import type { Fault } from './fault';

/** The knee leaves its lane towards the other knee, which is what most tasks are watched for. */
export const kneeInward: Fault = {
  direction: 'inward',
  phases: ['going', 'turning', 'coming-back'],
  seen: 'Knee medial of the foot (valgus direction), often with the thigh turning inward.',
  cue: 'Knee over the middle of the foot.',
};

export const kneeOutward: Fault = {
  direction: 'outward',
  phases: ['turning', 'going'],
  seen: 'Knee lateral of the foot (varus direction), often with the weight on the outer edge of the foot.',
  cue: 'Let the knee come in, over the second toe.',
};

export const pelvisDrops: Fault = {
  direction: 'other',
  phases: ['going', 'turning'],
  seen: 'The pelvis drops on the free side, or the hip shifts out over the working leg.',
  cue: 'Belt level, hip over the knee.',
};

export const trunkLeans: Fault = {
  direction: 'other',
  phases: ['turning', 'coming-back'],
  seen: 'The trunk leans sideways over the working leg.',
  cue: 'Breastbone over the belt buckle.',
};
