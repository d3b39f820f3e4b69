import { capitalised } from '#words/capitalised';
import { measureName } from '#words/formatMeasure';
import { reasonWords } from '#words/reasonWords';
import type { Finding, PainMoment } from './finding';

const moments: Record<PainMoment, string> = {
  before: 'before the exercises',
  during: 'during a set',
  after: 'after the exercises',
};

/** A finding for a list, in few words. */
export function shortFinding(finding: Finding): string {
  switch (finding.kind) {
    case 'pain-above-limit':
      return `pain ${finding.score}, limit ${finding.limit}`;
    case 'pain-risen':
      return `pain rose ${finding.from} to ${finding.to}`;
    case 'cut-short':
      return finding.sets === 1 ? 'a set cut short' : `${finding.sets} sets cut short`;
    case 'out-of-line':
      return `${finding.repetitions} of ${finding.ofMeasured} out of line`;
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
    case 'pain-above-limit':
      return `Pain reached ${finding.score} of 10 ${moments[finding.when]}; the limit was ${finding.limit}.`;
    case 'pain-risen':
      return `Pain rose from ${finding.from} before the exercises to ${finding.to} ${moments[finding.when]}.`;
    case 'cut-short':
      return finding.sets === 1
        ? `A set was cut short: ${closed(finding.firstReason)}`
        : `${finding.sets} sets were cut short; the first one: ${closed(finding.firstReason)}`;
    case 'out-of-line': {
      const { ways, measures } = finding;
      const beyond = measures.map(measureName).join(', ');
      const other = beyond === '' ? '' : `beyond its limit: ${beyond}`;
      if (ways.length === 0) return `In ${measuredShare(finding)} something went ${other}.`;
      const way = ways.length === 1 ? ways[0]! : 'sometimes inward, sometimes outward';
      return `In ${measuredShare(finding)} the knee went out of line, ${way}${other === '' ? '' : `, or something went ${other}`}.`;
    }
    case 'not-measured': {
      const fact = `${capitalised(share(finding))} could not be measured`;
      if (finding.reason === null) return `${fact}.`;
      const { short, advice } = reasonWords[finding.reason];
      return `${fact}: ${short}. For the next time: ${advice}`;
    }
    case 'nothing-found':
      return finding.sets === 1
        ? 'In a set that was recorded no complete repetition was found. Open it to see what the camera saw.'
        : `In ${finding.sets} sets that were recorded no complete repetition was found. Open them to see what the camera saw.`;
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

function measuredShare({ repetitions, ofMeasured }: { repetitions: number; ofMeasured: number }): string {
  if (ofMeasured === 1) return 'the one repetition that was measured';
  const of = repetitions === ofMeasured ? 'all' : `${repetitions} of the`;
  return `${of} ${ofMeasured} repetitions that were measured`;
}

/** With a full stop, where the words that were typed have none. */
function closed(text: string): string {
  return /[.!?…]$/.test(text) ? text : `${text}.`;
}
