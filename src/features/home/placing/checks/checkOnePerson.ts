import { message } from '#words/messages/message';
import { good, move, notYet, type Check } from './placingFinding';

/**
 * One person only: fails when the tracker jumps to somebody else, or to somebody of another size. It follows
 * one person at a time, so a second person whom it never follows goes unnoticed.
 */
export const checkOnePerson: Check = ({ extent, points, obstacle }) => {
  if (points.jumpedFrames > 0 || obstacle === 'tracking-jumped')
    return move(message('placing.somebody-else'), message('placing.somebody-else.short'));
  return extent === null
    ? notYet()
    : good(message('placing.one-person'), message('placing.one-person.short'));
};
