const small = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(' ');
const endings: Partial<Record<Intl.LDMLPluralRule, string>> = { one: 'st', two: 'nd', few: 'rd' };
const rules = new Intl.PluralRules('en', { type: 'ordinal' });

/** 'third', '13th'. @param place  from 1 on */
export function ordinalWord(place: number): string {
  return small[place - 1] ?? `${place}${endings[rules.select(place)] ?? 'th'}`;
}
