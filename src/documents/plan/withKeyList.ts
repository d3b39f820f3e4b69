/** A plan, or a draft of one, with a list in place of the one key that it had before version 8; else as it is. */
export function withKeyList<Plan extends object>(older: Plan): Plan {
  if (!('returnKey' in older)) return older;
  const inList = ([field, value]: [string, unknown]): [string, unknown] =>
    field === 'returnKey' ? ['returnKeys', value === null ? [] : [value]] : [field, value];
  return Object.fromEntries(Object.entries(older).map(inList)) as Plan;
}
