import { Problem, type ProblemKind } from '#core/problem';

/** Something that stopped the work, as it is shown to the person: what, why, what to do now. */
export interface ShownProblem {
  title: string;
  sentence: string;
}

const titles: Record<ProblemKind, string> = {
  recording: 'This session document can’t be opened',
  session: 'This session document can’t be opened',
  plan: 'This plan can’t be opened',
  file: 'This file can’t be opened',
  video: 'This video can’t be used',
  storage: 'This device could not keep or find it',
};

/**
 * Turns whatever was thrown into words.
 *
 * @param doing  what could not be done, as it follows 'could not': 'be opened', 'be tracked'
 */
export function explainProblem(error: unknown, doing: string): ShownProblem {
  if (error instanceof Problem) return { title: titles[error.kind], sentence: error.message };
  const detail = error instanceof Error && error.message !== '' ? error.message : 'no reason was given';
  return {
    title: `This could not ${doing}`,
    sentence: `The reason reported is: ${detail.replace(/\.$/, '')}. Try again; if it happens again, reload the page.`,
  };
}
