import { appliesAtHome, nextStep } from '#core/programme/nextStep';
import { thresholdFacts } from '#core/programme/proposalThresholds';
import { propose } from '#core/programme/propose';
import { nextStepSentence } from '#words/nextStepSentence';
import { proposalSentence } from '#words/proposalSentence';
import { CommandProblem } from './tools/commandProblem';
import { readArguments } from './tools/readArguments';
import { readCourse } from './tools/readCourse';
import { runCommand } from './tools/runCommand';

const usage =
  'Usage: npm run -s propose -- FILE.json   (FILE.json holds {limit, usualPain, swellingRule, upTo: {min, max}, ' +
  'sessions: [{day, painBefore, painDuring, worstNextDay, swelling, event, doneShare, measuredShare, ' +
  'expectedShare, lowerTenthShare, driftInward, effort, repetitions}]}, the oldest session first; if wanted, also ' +
  'stage: {exercise, id, stages?}, thresholds: {...} and autoStep), or --thresholds to list these with their sources';

await runCommand(async () => {
  const { positionals, values } = readArguments({ thresholds: { type: 'boolean' } }, usage);
  if (values.thresholds === true) return console.log(JSON.stringify(thresholdFacts, null, 2));
  const [path, ...more] = positionals;
  if (path === undefined) throw new CommandProblem(`The file is missing. ${usage}`);
  if (more.length > 0)
    throw new CommandProblem(`One file at a time, please; "${more[0]}" is too much. ${usage}`);
  const { course, thresholds, place, autoStep } = readCourse(path);
  const proposed = propose(course, thresholds);
  const { proposal, repetitions, reasons } = proposed;
  const staged =
    place === null
      ? {}
      : {
          next: nextStepSentence(nextStep(proposed, place)),
          appliesAtHome: appliesAtHome(proposed, autoStep),
        };
  console.log(
    JSON.stringify({
      proposal,
      repetitions,
      reasons: reasons.map((reason) => proposalSentence(reason)),
      ...staged,
    }),
  );
});
