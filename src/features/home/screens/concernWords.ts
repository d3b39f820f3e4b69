import { findSign } from '#core/safety/redFlags';
import { saidBy, type Cautions } from '#documents/plan/cautions';
import type { Concern } from '#documents/session/concernsOf';
import { capitalised } from '#words/capitalised';

/** What a person said of their body, in words that they know again. */
export function concernWords(concern: Concern): string {
  switch (concern.kind) {
    case 'signs':
      return concern.signs.map((id) => `${capitalised(findSign(id).words)}.`).join(' ');
    case 'stopped':
      if (concern.reason === 'gave-way') return 'Your knee gave way.';
      return concern.reason === 'locked' ? 'Your knee locked or got stuck.' : 'You felt dizzy or unsteady.';
    case 'fell':
      return 'You fell.';
    case 'pain':
      return concern.score === null ? 'You stopped because of pain.' : `It hurt ${concern.score} out of 10.`;
  }
}

/** What to do about it: what the plan says, or who to turn to. */
export function concernAdvice(concern: Concern, cautions: Cautions): string {
  switch (concern.kind) {
    case 'signs':
      return concern.signs.map((id) => findSign(id).advice).join(' ');
    case 'stopped':
      return concern.reason === 'dizzy' ? findSign('dizzy').advice : saidBy(cautions, cautions.ifItGivesWay);
    case 'fell':
      return findSign('fell').advice;
    case 'pain':
      return saidBy(cautions, cautions.beyondPainLimit);
  }
}
