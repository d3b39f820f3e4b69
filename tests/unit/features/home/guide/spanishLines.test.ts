import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { planSteps } from '#documents/plan/planSteps';
import { doseLine, numberLine, restLine, ruleLine, stepLine } from '#features/home/guide/lines';
import { numberWord } from '#features/home/guide/numberWord';
import { repetitionLine } from '#features/home/guide/repetitionLine';
import { english } from '#words/messages/english';
import { speak } from '#words/messages/message';
import { spanish } from '#words/messages/spanish';
import { smallHold, smallItem } from '../../../../support/smallPlan';

beforeEach(() => speak('es', spanish));
afterEach(() => speak('en', english));

const steps = planSteps([smallItem({ sides: ['left', 'right'], repetitions: 21 }), smallHold()]);

describe('spoken lines in Spanish', () => {
  it('name set, exercise and side', () => {
    expect(stepLine(steps[0]!)).toBe(
      'Serie uno de dos: levantarse de la silla con un pie delante, pierna izquierda.',
    );
    expect(restLine(steps[2]!)).toBe(
      'Descansa cuarenta segundos. Después cambia de pierna: serie uno de dos: levantarse de la silla con un pie delante, pierna derecha.',
    );
  });

  it('count in the gender of what is counted', () => {
    expect(doseLine(steps[0]!)).toBe('Veintiuna repeticiones.');
    expect(doseLine(steps.at(-1)!)).toBe('Dos veces, doce segundos cada vez.');
    expect(numberLine(1)).toBe('Uno.');
    expect(repetitionLine(4, 6, null, 'none', false).line).toBe('Cuatro. Dos más.');
    expect(repetitionLine(5, 6, null, 'none', false).line).toBe('Cinco. Una más.');
    expect(ruleLine(3, true)).toBe(
      'Si te duele más de tres sobre diez, para y siéntate. Si sales de la imagen, se pone en pausa.',
    );
  });

  // Spelling: Real Academia Española, Ortografía, cardinal numbers, from memory.
  it.each([
    [16, 'nothing', 'dieciséis'],
    [21, 'nothing', 'veintiuno'],
    [21, 'masculine', 'veintiún'],
    [31, 'feminine', 'treinta y una'],
    [45, 'masculine', 'cuarenta y cinco'],
    [100, 'masculine', 'cien'],
    [101, 'masculine', 'ciento un'],
    [200, 'feminine', 'doscientas'],
    [555, 'masculine', 'quinientos cincuenta y cinco'],
  ] as const)('writes %i (%s) as %s', (value, counting, word) => {
    expect(numberWord(value, counting)).toBe(word);
  });
});
