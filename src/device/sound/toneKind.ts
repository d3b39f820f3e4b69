/**
 * Sounds without words. 'tick': one more counted, one second less; 'outside': a repetition that left the limits;
 * 'start' and 'end' of working; 'pause'; 'down', 'turn' and 'up' beat the tempo.
 */
export const toneKinds = ['tick', 'outside', 'start', 'end', 'pause', 'down', 'turn', 'up'] as const;
export type ToneKind = (typeof toneKinds)[number];
