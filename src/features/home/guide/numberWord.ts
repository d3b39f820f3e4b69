import type { Language } from '#words/messages/languages';
import { currentLanguage } from '#words/messages/message';

/** What a Spanish number counts: 'una repetición', 'un segundo', or nothing: 'uno'. */
export type Counting = 'nothing' | 'feminine' | 'masculine';

const writers: Record<Language, (value: number, counting: Counting) => string> = {
  en: englishNumber,
  es: spanishNumber,
};

/**
 * A count as a word, so that every voice says it in the language of the other lines.
 *
 * @param value  whole, 0 to 999
 */
export function numberWord(value: number, counting: Counting = 'nothing'): string {
  return writers[currentLanguage()](value, counting);
}

const small =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

function englishNumber(value: number): string {
  if (value < 20) return small[value]!;
  if (value < 100) return joined(tens[Math.floor(value / 10) - 2]!, '-', value % 10);
  return joined(`${small[Math.floor(value / 100)]!} hundred`, ' and ', value % 100);
}

function joined(start: string, link: string, rest: number): string {
  return rest === 0 ? start : `${start}${link}${englishNumber(rest)}`;
}

// Spelling: Real Academia Española, Diccionario panhispánico de dudas, 'cardinales', from memory.
const pocos =
  'cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve'.split(
    ' ',
  );
const decenas = 'treinta cuarenta cincuenta sesenta setenta ochenta noventa'.split(' ');
const centenas =
  'ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos'.split(
    ' ',
  );

function spanishNumber(value: number, counting: Counting): string {
  if (value === 100) return 'cien';
  if (value > 100) {
    const hundreds = centenas[Math.floor(value / 100) - 1]!;
    const start = counting === 'feminine' ? hundreds.replace(/os$/, 'as') : hundreds;
    return value % 100 === 0 ? start : `${start} ${spanishNumber(value % 100, counting)}`;
  }
  if (value >= 30) {
    const ten = decenas[Math.floor(value / 10) - 3]!;
    return value % 10 === 0 ? ten : `${ten} y ${spanishNumber(value % 10, counting)}`;
  }
  const word = pocos[value]!;
  if (counting === 'nothing' || !word.endsWith('uno')) return word;
  if (counting === 'feminine') return word.replace(/o$/, 'a');
  return value === 1 ? 'un' : 'veintiún';
}
