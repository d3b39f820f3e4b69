import { describe, expect, it } from 'vitest';
import { formatMeasure, formatValue, longMeasure } from '#words/formatMeasure';

describe('formatMeasure(id, extreme), longMeasure(id, extreme)', () => {
  it('say number, direction in words and band', () => {
    expect(formatMeasure('knee-off-line', { value: 0.062, band: 0.018 })).toBe('6 % in ±2');
    expect(longMeasure('knee-off-line', { value: -0.041, band: 0.018 })).toBe(
      '4 % of leg length outward, give or take 2',
    );
    expect(formatMeasure('pelvic-drop', { value: -4.4, band: 2 })).toBe('4° up ±2');
    expect(longMeasure('pelvic-drop', { value: 4.6, band: 2 })).toBe('5° free side down, give or take 2');
    expect(formatMeasure('trunk-lean', { value: -12, band: 3.4 })).toBe('12° away ±3');
    expect(longMeasure('trunk-lean', { value: 12, band: 3.4 })).toBe(
      '12° towards the working side, give or take 3',
    );
  });

  it('keep the sign where a measure has no directions', () => {
    expect(formatMeasure('pelvis-place', { value: -0.124, band: 0.05 })).toBe('−12 % ±5');
    expect(longMeasure('depth', { value: 0.35, band: 0.02 })).toBe('35 % of leg length, give or take 2');
  });

  it('leave the direction out at 0 and never show a band as nothing', () => {
    expect(formatMeasure('trunk-lean', { value: -0.3, band: 0.2 })).toBe('0° ±1');
    expect(formatMeasure('depth', { value: -0.001, band: 0 })).toBe('0 % ±1');
    expect(longMeasure('knee-off-line', { value: 0, band: 0 })).toBe('0 % of leg length, give or take 1');
  });

  it('say the knee angle in degrees, with their number', () => {
    expect(formatMeasure('knee-angle', { value: 14.2, band: 2.4 })).toBe('14° in ±2');
    expect(formatMeasure('knee-angle', { value: -3.4, band: 5.6 })).toBe('3° out ±6');
    expect(formatMeasure('knee-angle', { value: 0.3, band: 0.2 })).toBe('0° ±1');
    expect(longMeasure('knee-angle', { value: 14.2, band: 2.4 })).toBe('14 degrees inward, give or take 2');
    expect(longMeasure('knee-angle', { value: -1.2, band: 5 })).toBe('1 degree outward, give or take 5');
    expect(longMeasure('knee-angle', { value: 0, band: 5 })).toBe('0 degrees, give or take 5');
  });
});

describe('formatValue(id, value)', () => {
  it.each([
    [13.6, '14° inward'],
    [-2.5, '3° outward'],
    [0.5, '1° inward'],
    [0.49, '0°'],
    [-0.3, '0°'],
    [-0, '0°'],
  ])('writes a knee angle of %d as %s', (deg, words) => {
    expect(formatValue('knee-angle', deg)).toBe(words);
  });
});
