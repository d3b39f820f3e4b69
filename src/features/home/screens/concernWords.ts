import { saidBy, type Cautions } from '#documents/plan/cautions';
import type { Concern } from '#documents/session/concernsOf';
import { capitalised } from '#words/capitalised';
import { message } from '#words/messages/message';
import { signAdvice, signWords } from '#words/signWords';

/** What a person said of their body, in words that they know again. */
export function concernWords(concern: Concern): string {
  switch (concern.kind) {
    case 'signs':
      return concern.signs.map((id) => `${capitalised(signWords(id))}.`).join(' ');
    case 'stopped':
      return message(`concern.${concern.reason}`);
    case 'fell':
      return message('concern.fell');
    case 'pain':
      return concern.score === null
        ? message('concern.stopped-pain')
        : message('concern.pain', { score: concern.score });
  }
}

/** What to do about it, each to be said once: what the plan says, and who to turn to. */
export function concernAdvice(concern: Concern, cautions: Cautions): string[] {
  const fromPlan = saidBy(cautions, cautions.ifItGivesWay);
  switch (concern.kind) {
    case 'signs':
      return [concern.signs.map(signAdvice).join(' ')];
    case 'stopped':
      return [concern.reason === 'dizzy' ? signAdvice('dizzy') : fromPlan];
    case 'fell':
      return cautions.from === 'therapist'
        ? [fromPlan, message('concern.fell.doctor')]
        : [signAdvice('fell')];
    case 'pain':
      return [saidBy(cautions, cautions.beyondPainLimit)];
  }
}
