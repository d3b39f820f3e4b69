import { otherSide, type Side } from '#core/protocol/side';
import type { PainfulSide } from '#documents/patient/patientDocument';

/** What can be chosen as the sides of a task, in the order in which they work. */
export interface SideChoice {
  id: string;
  name: string;
  sides: Side[];
}

/**
 * The sides of a task to choose from: where one knee is noted as painful, its leg first and named so.
 *
 * @param painful  null where nothing is noted
 */
export function sideChoices(painful: PainfulSide | null): SideChoice[] {
  const one: Side = painful === 'left' ? 'left' : 'right';
  const other = otherSide(one);
  const isKnown = painful === 'left' || painful === 'right';
  const single = (side: Side, note: string): SideChoice => ({
    id: side,
    name: `${side === 'left' ? 'Left' : 'Right'} leg${isKnown ? note : ''}`,
    sides: [side],
  });
  const both = (first: Side, second: Side): SideChoice => ({
    id: `${first}-${second}`,
    name: `Both, ${first} first`,
    sides: [first, second],
  });
  return [single(one, ' (painful)'), single(other, ' (other)'), both(one, other), both(other, one)];
}
