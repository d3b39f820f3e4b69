import { Problem } from '#core/problem';
import { message } from '#words/messages/message';

/** Something that stopped the work, as it is shown to the person: what, why, what to do now. */
export interface ShownProblem {
  title: string;
  sentence: string;
}

/** What could not be done. */
export type Doing =
  | 'open'
  | 'save'
  | 'keep'
  | 'record'
  | 'track'
  | 'follow'
  | 'measure'
  | 'prepare'
  | 'read'
  | 'seal'
  | 'attach'
  | 'restore'
  | 'delete'
  | 'list'
  | 'look-closer'
  | 'do';

/** Puts anything that was thrown into words. */
export function explainProblem(error: unknown, doing: Doing): ShownProblem {
  if (error instanceof Problem) return { title: message(`trouble.${error.kind}`), sentence: error.message };
  const detail =
    error instanceof Error && error.message !== '' ? error.message : message('trouble.no-reason');
  return {
    title: message(`trouble.${doing}`),
    sentence: message('trouble.reason', { reason: detail.replace(/\.$/, '') }),
  };
}
