import type { PainTime, ProposalReason, QualityFigures } from '#core/programme/proposal';
import type { SessionEvent, UnansweredId } from '#core/programme/stageCourse';
import { numberedDay, type DayName } from './dayName';

const eventWords: Record<SessionEvent, string> = {
  'gave-way': 'the knee gave way',
  locked: 'the knee locked',
  fell: 'the patient fell',
  'red-flag': 'a red flag was reported',
};

const timeWords: Record<PainTime, string> = {
  before: 'pain before the session',
  during: 'pain during the session',
  'next-day': 'next-day pain',
};

const unansweredWords: Record<UnansweredId, string> = {
  'pain-before': 'pain before the session',
  'pain-during': 'pain during the session',
  effort: 'effort',
};

/**
 * What a proposal rests on as a sentence for the therapist, with its figures. It judges no knee and promises nothing.
 *
 * @param dayName  what a day is called; its number where left out
 */
export function proposalSentence(reason: ProposalReason, dayName: DayName = numberedDay): string {
  switch (reason.kind) {
    case 'event':
      return `${dayName(reason.day)}: ${eventWords[reason.event]}.`;
    case 'swollen': {
      const { swelling, rule } = reason;
      if (swelling === 'much-more') return `${dayName(reason.day)}: the knee was much more swollen.`;
      const asked = rule === 'contact' ? 'speaking to the patient first' : 'a rest day';
      return `${dayName(reason.day)}: the knee was more swollen, for which ${asked} was agreed.`;
    }
    case 'strong-pain':
      return `${dayName(reason.day)}: ${timeWords[reason.time]} was ${reason.pain}; from ${reason.from} on, the exercise stops.`;
    case 'above-limit':
      return `${dayName(reason.day)}: ${timeWords[reason.time]} was ${reason.pain}, above the limit of ${reason.limit}.`;
    case 'above-usual':
      return (
        `${dayName(reason.day)}: ${timeWords[reason.time]} was ${reason.pain}, ` +
        `more than ${reason.allowed} above the usual ${reason.usual}.`
      );
    case 'pain-risen':
      return `${dayName(reason.day)}: ${timeWords[reason.time]} was ${reason.pain}, up from ${reason.before} before the session.`;
    case 'drift-inward':
      return `${dayName(reason.day)}: the knee drifted inward during a set.`;
    case 'not-all-done':
      return `${dayName(reason.day)}: ${percent(reason.doneShare)} of the plan was done; ${percent(reason.least)} is needed.`;
    case 'few-sessions':
      return `Too early. Sessions at this stage so far: ${reason.sessions}; at least ${reason.needed} are needed.`;
    case 'few-days':
      return (
        `Too early. Days from the first to the last of ${reason.sessions} sessions: ${reason.days}; ` +
        `at least ${reason.needed} are needed.`
      );
    case 'next-day-unknown':
      return `${dayName(reason.day)}: the next-day pain is missing. Ask for it.`;
    case 'unanswered':
      return `${dayName(reason.day)}: ${unansweredWords[reason.what]} was not answered. Ask for it.`;
    case 'not-measured':
      return (
        `Quality not measured. Repetitions measured: ${listed(reason.measuredShares.map(percent))}. ` +
        `At least ${percent(reason.least)} is needed in ${reason.goodSessions} sessions; film once more.`
      );
    case 'not-in-line':
      return (
        `${inLine(reason)} At least ${percent(reason.least.expected)} (${percent(reason.least.lowerTenth)}) is needed ` +
        `in ${reason.goodSessions} of them and in the last.`
      );
    case 'hard':
      return `${dayName(reason.day)}: effort was ${reason.effort} of 10. Above ${reason.most}, nothing is added.`;
    case 'pain-within':
      return `Pain during the sessions: ${listed(reason.during)}, limit ${reason.limit}. Next-day pain: ${listed(reason.nextDay)}.`;
    case 'in-line':
      return inLine(reason);
    case 'all-done':
      return `Done: ${listed(reason.doneShares.map(percent))} of the plan. Effort of the last session: ${reason.effort} of 10.`;
    case 'repetitions':
      return `Repetitions: ${reason.repetitions}. The next stage comes after ${reason.min}.`;
  }
}

function inLine({ shares }: QualityFigures): string {
  const told = shares.map((share) =>
    share === null ? 'not measured' : `${percent(share.expected)} (${percent(share.lowerTenth)})`,
  );
  return `Quality, as the share expected in line (and that reached with a chance of 9 in 10): ${listed(told)}.`;
}

/** Rounded down, so that no share looks as if it reached a threshold that it missed. */
function percent(share: number): string {
  return `${Math.floor(1000 * share + 1e-6) / 10} %`;
}

function listed(values: readonly (string | number)[]): string {
  return values.length < 2 ? values.join('') : `${values.slice(0, -1).join(', ')} and ${values.at(-1)}`;
}
