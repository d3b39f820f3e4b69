import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Table from 'cli-table3';
import { deviation, mean, median } from 'd3-array';
import { sides } from '#core/protocol/side';
import { compareTrial, type TrialComparison } from '../validation/mocap/compareTrial';
import { jointCentres } from '../validation/mocap/jointCentres';
import { CommandProblem } from './tools/commandProblem';
import { readArguments } from './tools/readArguments';
import { runCommand } from './tools/runCommand';

const usage = 'Usage: npm run -s mocap -- FOLDER   (FOLDER holds the marker files m05_*.csv)';
const yawsDeg = [-20, -10, -5, 0, 5, 10, 20];

await runCommand(async () => {
  const { positionals } = readArguments({}, usage);
  const [folder] = positionals;
  if (folder === undefined) throw new CommandProblem(`The folder is missing. ${usage}`);
  if (!existsSync(folder)) throw new CommandProblem(`There is no folder "${folder}". ${usage}`);
  const names = readdirSync(folder).filter((name) => name.startsWith('m05_') && name.endsWith('.csv'));
  if (names.length === 0)
    throw new CommandProblem(`"${folder}" holds no sit-to-stand trials (m05_*.csv). ${usage}`);
  const trials = names
    .map((name) => jointCentres(readFileSync(join(folder, name), 'utf8')))
    .filter((trial) => trial !== null);
  console.log(
    `${trials.length} of ${names.length} sit-to-stand trials have every marker; both legs, ${sides.length * trials.length} leg-trials a yaw.`,
  );

  const table = new Table({
    head: [
      'camera yaw',
      'leg-trials',
      'yaw error: bias, SD',
      'peak: mean abs. error',
      'bias',
      'in band',
      'median ±',
      'picture peak: mean abs. error',
    ],
    style: { head: [], border: [] },
  });
  for (const yawDeg of yawsDeg) {
    const camera = { yawDeg, heightM: 0.7, distanceM: 2.7, focalPx: 1100, widthPx: 720, heightPx: 1280 };
    const compared = trials
      .flatMap((trial) => sides.map((side) => compareTrial(trial, side, camera)))
      .filter((comparison): comparison is TrialComparison => comparison !== null);
    const errors = compared.map((trial) => trial.measuredPeakDeg - trial.truePeakDeg);
    const yawErrors = compared.map((trial) => trial.yawErrorDeg);
    const inBand = compared.filter((trial, i) => Math.abs(errors[i]!) <= trial.bandDeg).length;
    table.push([
      `${yawDeg}°`,
      `${compared.length}`,
      `${fixed(mean(yawErrors))}°, ${fixed(deviation(yawErrors))}°`,
      `${fixed(mean(errors, Math.abs))}°`,
      `${fixed(mean(errors))}°`,
      `${Math.round((100 * inBand) / compared.length)} %`,
      `${fixed(median(compared, (trial) => trial.bandDeg))}°`,
      `${fixed(mean(compared, (trial) => Math.abs(trial.picturePeakDeg - trial.truePeakDeg)))}°`,
    ]);
  }
  console.log(table.toString());
});

function fixed(value: number | undefined): string {
  return value === undefined ? '-' : value.toFixed(1);
}
