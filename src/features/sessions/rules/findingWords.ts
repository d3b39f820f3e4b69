import type { SignId } from '#core/safety/signs';
import type { PainMoment } from '#documents/plan/cautions';
import type { SilenceReason } from '#documents/session/sessionDocument';
import { capitalised } from '#words/capitalised';
import { dayWords } from '#words/dateWords';
import { measureName } from '#words/formatMeasure';
import { reasonWords } from '#words/reasonWords';
import { signAdvice, signWords } from '#words/signWords';
import type { Finding, StopReason } from './finding';

const moments: Record<PainMoment, string> = {
  before: 'before the exercises',
  during: 'during a set',
  after: 'after the exercises',
};

const shortSigns: Record<SignId, string> = {
  'hot-joint': 'fever or hot joint',
  calf: 'calf',
  'no-weight': 'no weight on the leg',
  'fall-or-blow': 'fall or blow',
  'swollen-after-twist': 'swollen after a twist',
  'straight-leg': 'straight leg not lifted',
  shape: 'shape, or stuck',
  'cold-foot': 'cold foot',
  numbness: 'numb or weak',
  'night-pain': 'night pain',
  'weight-loss': 'weight loss or cancer',
  'young-limp': 'under 18, limp',
  wound: 'wound',
  dizzy: 'dizzy',
  swollen: 'more swollen',
  'much-swollen': 'much more swollen',
  'gave-way': 'gave way',
  locked: 'locked',
  fell: 'fall or blow',
};

const shortReasons: Record<StopReason, string> = {
  pain: 'pain',
  'gave-way': 'knee gave way',
  locked: 'knee locked',
  dizzy: 'dizzy',
  other: 'another reason',
  'not-told': 'no reason given',
};

const reasonSentences: Record<StopReason, string> = {
  pain: 'because of pain',
  'gave-way': 'because the knee gave way',
  locked: 'because the knee locked or got stuck',
  dizzy: 'because they felt dizzy or unsteady',
  other: 'for another reason',
  'not-told': 'and gave no reason',
};

const shortSilence: Record<SilenceReason, string> = {
  hurts: 'it hurts',
  'no-time': 'no time',
  away: 'ill or away',
  trouble: 'trouble with the device',
  unfilmed: 'done without filming',
};

const silenceSentences: Record<SilenceReason, string> = {
  hurts: 'it hurts. Ask how much, and where',
  'no-time': 'there was no time',
  away: 'they were ill or away',
  trouble: 'the camera or the phone gave them trouble',
  unfilmed: 'they did the exercises without filming',
};

/** A finding for a list, in few words. */
export function shortFinding(finding: Finding): string {
  switch (finding.kind) {
    case 'signs':
      return `sign: ${finding.signs.map((id) => shortSigns[id]).join(', ')}`;
    case 'stopped': {
      const fell = finding.fell === true ? ', fell' : '';
      return `${finding.hasBegun ? 'stopped' : 'not begun'}: ${shortReasons[finding.reason]}${fell}`;
    }
    case 'silent':
      return `${finding.days} days without: ${shortSilence[finding.reason]}`;
    case 'unfilmed':
      return 'not filmed';
    case 'went-on':
      return `went on at ${finding.score}, limit ${finding.limit}`;
    case 'taken-back':
      return 'sign taken back';
    case 'says-cleared':
      return 'says it was cleared';
    case 'reopened':
      return 'opened again';
    case 'settled':
      return `settled: ${finding.who}`;
    case 'pain-above-limit':
      return `pain ${finding.score}, limit ${finding.limit}`;
    case 'pain-risen':
      return `pain rose ${finding.from} to ${finding.to}`;
    case 'cut-short':
      return finding.sets === 1 ? 'a set cut short' : `${finding.sets} sets cut short`;
    case 'side-doubtful':
      return finding.sets === 1 ? 'other leg in a set?' : `other leg in ${finding.sets} sets?`;
    case 'out-of-line':
      return `${finding.repetitions} of ${finding.ofMeasured} out of line`;
    case 'mostly-untold':
      return `${finding.repetitions} of ${finding.ofMeasured} too close to tell`;
    case 'not-measured':
      return `${finding.repetitions} of ${finding.of} not measured`;
    case 'nothing-found':
      return 'no repetition found';
    case 'unreadable':
      return finding.sets === 1 ? 'a set can’t be read' : `${finding.sets} sets can’t be read`;
    case 'sets-missing':
      return `${finding.done} of ${finding.of} sets done`;
    case 'waiting':
      return 'not yet measured carefully';
  }
}

/** The same as a sentence: what it is, and what to do where something can be done. */
export function findingSentence(finding: Finding): string {
  switch (finding.kind) {
    case 'signs':
      return `Before the exercises, said: ${finding.signs.map(quoted).join(' ')} Nothing was done; the advice was: ${finding.signs.map(signAdvice).join(' ')}`;
    case 'stopped': {
      const what = finding.hasBegun ? 'Stopped' : 'Did not begin,';
      const fell = finding.fell === null ? '' : finding.fell ? ' They fell.' : ' They did not fall.';
      return `${what} ${reasonSentences[finding.reason]}.${fell}`;
    }
    case 'silent':
      return `Nothing was kept for ${finding.days} days. Asked why, the patient said: ${silenceSentences[finding.reason]}.`;
    case 'unfilmed':
      return 'Not filmed: the sets were done, as the patient says.';
    case 'went-on': {
      const times = finding.times === 1 ? '' : ` ${finding.times} times`;
      return `Went on${times} with pain of ${finding.score}, above the limit of ${finding.limit}, saying that you had agreed.`;
    }
    case 'taken-back':
      return `Chose, and then took back as a mistake: ${finding.signs.map(quoted).join(' ')}`;
    case 'says-cleared':
      return `Before this session, the patient said that what was said earlier has been cleared by: ${closed(finding.who)}`;
    case 'reopened':
      return `Opened again on ${dayWords(finding.at)}${finding.who === '' ? '.' : ` by ${closed(finding.who)}`}`;
    case 'settled': {
      const day = dayWords(finding.at);
      return finding.by === 'therapist'
        ? `Settled on ${day} by ${closed(finding.who)}`
        : `On ${day} the patient said that it has been cleared by: ${closed(finding.who)}`;
    }
    case 'pain-above-limit':
      return `Pain reached ${finding.score} of 10 ${moments[finding.when]}; the limit was ${finding.limit}.`;
    case 'pain-risen':
      return `Pain rose from ${finding.from} before the exercises to ${finding.to} ${moments[finding.when]}.`;
    case 'cut-short':
      return finding.sets === 1
        ? `A set was cut short: ${closed(finding.firstReason)}`
        : `${finding.sets} sets were cut short; the first one: ${closed(finding.firstReason)}`;
    case 'side-doubtful':
      return finding.sets === 1
        ? 'In one set it looks as if the other leg worked. Open it to check the side.'
        : `In ${finding.sets} sets it looks as if the other leg worked. Open them to check the side.`;
    case 'out-of-line': {
      const { ways, measures } = finding;
      const beyond = measures.map(measureName).join(', ');
      const other = beyond === '' ? '' : `beyond its limit: ${beyond}`;
      const doubt = probableWords(finding);
      if (ways.length === 0) return `In ${measuredShare(finding)} something went ${other}${doubt}.`;
      const way = ways.length === 1 ? ways[0]! : 'sometimes inward, sometimes outward';
      return `In ${measuredShare(finding)} the knee went out of line, ${way}${other === '' ? '' : `, or something went ${other}`}${doubt}.`;
    }
    case 'mostly-untold':
      return `${capitalised(measuredShare(finding))} were too close to a limit to tell. Filmed square to the camera, from farther away and in good light, more can be told.`;
    case 'not-measured': {
      const fact = `${capitalised(share(finding))} could not be measured`;
      if (finding.reason === null) return `${fact}.`;
      const { short, advice } = reasonWords(finding.reason);
      return `${fact}: ${short}. Next time: ${advice}`;
    }
    case 'nothing-found':
      return finding.sets === 1
        ? 'No complete repetition was found in one recorded set. Open it to see what the camera saw.'
        : `No complete repetition was found in ${finding.sets} recorded sets. Open them to see what the camera saw.`;
    case 'unreadable':
      return `${finding.sets === 1 ? 'The recording of a set' : `The recordings of ${finding.sets} sets`} can’t be read; the set says why.`;
    case 'sets-missing':
      return `${finding.done} of the plan’s ${finding.of} sets were done.`;
    case 'waiting':
      return (
        `${finding.sets === 1 ? 'A set is' : `${finding.sets} sets are`} not yet measured carefully from the video. ` +
        'Until then the numbers are those found while recording, and may still change.'
      );
  }
}

function share({ repetitions, of }: { repetitions: number; of: number }): string {
  const noun = of === 1 ? 'repetition' : 'repetitions';
  return repetitions === of && of > 1 ? `all ${of} ${noun}` : `${repetitions} of ${of} ${noun}`;
}

/** How much of it is only probable; empty where nothing is. */
function probableWords({ repetitions, probable }: { repetitions: number; probable: number }): string {
  if (probable === 0) return '';
  return `; ${probable === repetitions ? 'only probably' : `in ${probable} of them only probably`}`;
}

function measuredShare({ repetitions, ofMeasured }: { repetitions: number; ofMeasured: number }): string {
  if (ofMeasured === 1) return 'the one repetition that was measured';
  const of = repetitions === ofMeasured ? 'all' : `${repetitions} of the`;
  return `${of} ${ofMeasured} repetitions that were measured`;
}

function quoted(id: SignId): string {
  return `‘${capitalised(signWords(id))}.’`;
}

/** With a full stop, where the words that were typed have none. */
function closed(text: string): string {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
