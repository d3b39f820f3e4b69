import type { Unit } from './measure';

export const degrees: Unit = { factor: 1, short: '°', long: '°', csv: 'deg' };
export const shareOfLeg: Unit = { factor: 100, short: ' %', long: ' % of leg length', csv: 'pct_leg' };
export const shareOfStance: Unit = { factor: 100, short: ' %', long: ' % of the stance', csv: 'pct_stance' };
