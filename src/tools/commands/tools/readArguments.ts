import { parseArgs, type ParseArgsConfig } from 'node:util';
import { CommandProblem } from './commandProblem';

/**
 * Splits a command line into options and the rest.
 *
 * @param usage  one line, shown with every problem and for --help
 * @throws CommandProblem  for an option that does not exist, or one without its value
 */
export function readArguments<const Options extends NonNullable<ParseArgsConfig['options']>>(
  options: Options,
  usage: string,
) {
  const args = process.argv.slice(2);
  if (args.includes('--help') || args.includes('-h')) {
    console.log(usage);
    process.exit(0);
  }
  try {
    return parseArgs({ args, options, allowPositionals: true, strict: true });
  } catch (error) {
    const [sentence = ''] = (error instanceof Error ? error.message : String(error)).split('. ');
    throw new CommandProblem(`${sentence.replace(/\.$/, '')}. ${usage}`);
  }
}
