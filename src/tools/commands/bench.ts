import { join } from 'node:path';
import Table from 'cli-table3';
import { defaultPoseModel, poseModels, type PoseModel } from '#core/keypoints/poseModel';
import { benchClinic } from './tools/benchClinic';
import { benchClose } from './tools/benchClose';
import { benchCore } from './tools/benchCore';
import { benchHome } from './tools/benchHome';
import { benchLive } from './tools/benchLive';
import { benchPractice } from './tools/benchPractice';
import { benchRecorded } from './tools/benchRecorded';
import { benchReview } from './tools/benchReview';
import { checkOutput } from './tools/checkInput';
import { CommandProblem } from './tools/commandProblem';
import { openHeadless, type Headless } from './tools/openHeadless';
import { projectRoot } from './tools/projectRoot';
import { readArguments } from './tools/readArguments';
import { readChoice } from './tools/readChoice';
import { runCommand } from './tools/runCommand';
import { writeJson } from './tools/writeJson';

/** Every part of the benchmark by its name; each returns its figures, one per key. */
const parts = {
  recorded: async (browser: () => Promise<Headless>, model: PoseModel) =>
    benchRecorded(await browser(), join(projectRoot, 'fixtures/example.mp4'), model),
  close: async (browser: () => Promise<Headless>, model: PoseModel) =>
    benchClose(await browser(), join(projectRoot, 'fixtures/example.mp4'), model),
  live: async (browser: () => Promise<Headless>, model: PoseModel) =>
    benchLive(await browser(), join(projectRoot, 'fixtures/example.mp4'), model),
  core: () => Promise.resolve(benchCore(join(projectRoot, 'fixtures/example.session.json'))),
  clinic: () => benchClinic(join(projectRoot, 'fixtures/example.session.json')),
  practice: () => benchPractice(),
  review: () => benchReview(join(projectRoot, 'fixtures/example.session.json')),
  home: () =>
    benchHome(
      join(projectRoot, 'fixtures/example.session.json'),
      join(projectRoot, 'fixtures/example.plan.json'),
    ),
};
type PartName = keyof typeof parts;
const partNames = Object.keys(parts) as PartName[];

const usage = `Usage: npm run -s bench -- [--only ${partNames.join('|')}] [--model lite|full|heavy] [--json OUT]`;

await runCommand(async () => {
  const { values, positionals } = readArguments(
    {
      only: { type: 'string' },
      model: { type: 'string', default: defaultPoseModel },
      json: { type: 'string' },
    },
    usage,
  );
  if (positionals.length > 0) throw new CommandProblem(`"${positionals[0]}" is too much. ${usage}`);
  const names = values.only === undefined ? partNames : [readChoice('--only', values.only, partNames)];
  const model = readChoice('--model', values.model, poseModels);
  checkOutput(values.json);

  let headless: Headless | null = null;
  const browser = async () => (headless ??= await openHeadless());
  const results: Partial<Record<PartName, Awaited<ReturnType<(typeof parts)[PartName]>>>> = {};
  try {
    for (const name of names) results[name] = await parts[name](browser, model);
  } finally {
    await (headless as Headless | null)?.close();
  }
  console.log(benchTable(results));
  if (values.json !== undefined) writeJson(values.json, results, 1);
});

/** Figures by name; those of a group after the group's name. */
function flat(figures: object): [name: string, value: unknown][] {
  return Object.entries(figures).flatMap(([name, value]: [string, unknown]) =>
    typeof value === 'object' && value !== null
      ? flat(value).map(([inner, one]): [string, unknown] => [`${name}: ${inner}`, one])
      : [[name, value] as [string, unknown]],
  );
}

function benchTable(results: Record<string, object>): string {
  const table = new Table({
    head: ['Part', 'Figure', 'Value'],
    style: { head: [], border: [], compact: true },
  });
  for (const [part, figures] of Object.entries(results)) {
    for (const [figure, value] of flat(figures)) {
      table.push([
        part,
        figure,
        typeof value === 'number' ? String(Math.round(value * 100) / 100) : String(value),
      ]);
    }
  }
  return table.toString();
}
