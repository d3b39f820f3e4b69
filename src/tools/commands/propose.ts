import { propose } from '#core/programme/propose';
import { proposalSentence } from '#words/proposalSentence';
import { CommandProblem } from './tools/commandProblem';
import { readArguments } from './tools/readArguments';
import { readCourse } from './tools/readCourse';
import { runCommand } from './tools/runCommand';

const usage =
  'Usage: npm run -s propose -- FILE.json   (FILE.json holds {limit, usualPain, swellingRule, upTo: {min, max}, ' +
  'sessions: [{day, painBefore, painDuring, worstNextDay, swelling, event, doneShare, measuredShare, ' +
  'expectedShare, lowerTenthShare, driftInward, effort, repetitions}]}, the oldest session first)';

await runCommand(async () => {
  const [path, ...more] = readArguments({}, usage).positionals;
  if (path === undefined) throw new CommandProblem(`The file is missing. ${usage}`);
  if (more.length > 0)
    throw new CommandProblem(`One file at a time, please; "${more[0]}" is too much. ${usage}`);
  const { proposal, repetitions, reasons } = propose(readCourse(path));
  console.log(JSON.stringify({ proposal, repetitions, reasons: reasons.map(proposalSentence) }));
});
