import { describe, expect, it } from 'vitest';
import { diagnosticText } from '#shell/diagnosticText';

const about = { screen: 'review', browser: 'Browser 1.2' };

describe('diagnosticText(error, about)', () => {
  it('gives the kind, the screen and the places in the program', () => {
    const error = new RangeError('too long');
    error.stack = [
      'RangeError: too long',
      '    at draw (https://clinic.example/assets/ReviewScreen-abc.js:12:345)',
      '    at https://clinic.example/assets/main-def.js:1:2',
    ].join('\n');
    expect(diagnosticText(error, about)).toBe(
      [
        'Overfoot, unexpected error',
        'kind: RangeError',
        'screen: review',
        'browser: Browser 1.2',
        'at ReviewScreen-abc.js:12:345',
        'at main-def.js:1:2',
      ].join('\n'),
    );
  });

  it.each([
    new Error('Grey Otter 3, pain 7'),
    new Error('line one\n at Grey Otter 3.js:1:2 pain'),
    Object.assign(new Error('x'), { name: 'Grey Otter 3' }),
    'Grey Otter 3',
    { patient: 'Grey Otter 3' },
    undefined,
  ])('tells nothing of a person (%#)', (error) => {
    expect(diagnosticText(error, about)).not.toMatch(/Otter|pain|https?:/);
  });
});
