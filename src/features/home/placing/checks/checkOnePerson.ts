import { good, move, notYet, type Check } from './placingFinding';

/**
 * One person only: told when the tracker leaps to somebody else, or to somebody of another size. It follows one person
 * at a time, so that a second one whom it never takes up is not seen by it.
 */
export const checkOnePerson: Check = ({ extent, points, obstacle }) => {
  if (points.jumpedFrames > 0 || obstacle === 'tracking-jumped')
    return move('Somebody else is in the picture. Only you should be in it.', 'Only you');
  return extent === null ? notYet : good('Only you are followed.', 'One person');
};
