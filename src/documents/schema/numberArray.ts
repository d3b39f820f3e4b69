import { z } from './zod';

/** The range of each number in an array, and the most numbers allowed. */
interface Bounds {
  min: number;
  max: number;
  most: number;
}

/** An array of numbers, checked in one go: a million of them take milliseconds, not a tenth of a second. */
export function numberArray({ min, max, most }: Bounds) {
  return z
    .custom<number[]>(Array.isArray, 'expected an array')
    .check(({ value, issues }) => {
      if (!Array.isArray(value)) return;
      if (value.length > most)
        issues.push({ code: 'custom', input: value, message: `more than ${most} numbers` });
      // A gap in an array is not a number; a loop by index finds it.
      for (let at = 0; at < value.length; at++) {
        const one: unknown = value[at];
        if (typeof one === 'number' && one >= min && one <= max) continue;
        const message = `expected a number from ${min} to ${max}`;
        return void issues.push({ code: 'custom', input: one, path: [at], message });
      }
    })
    .meta({ maxItems: most, type: 'array', items: { type: 'number', minimum: min, maximum: max } });
}
