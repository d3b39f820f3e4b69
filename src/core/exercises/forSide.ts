import { otherSide, type Side } from '../protocol/side';

/** A sentence of an exercise for one working side: `{side}` is that side, `{other}` the other one. */
export function forSide(sentence: string, side: Side): string {
  return sentence.replaceAll('{side}', side).replaceAll('{other}', otherSide(side));
}
