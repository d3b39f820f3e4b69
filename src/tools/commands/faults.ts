import { chromium } from '@playwright/test';
import { CommandProblem } from './tools/commandProblem';
import { ensureBuilt } from './tools/ensureBuilt';
import { faults } from './tools/faults/faults';
import { runFault, type FaultResult } from './tools/faults/runFault';
import { browserSwitches, findBrowser } from './tools/findBrowser';
import { readArguments } from './tools/readArguments';
import { runCommand } from './tools/runCommand';
import { serveBuild } from './tools/serveBuild';
import { writeJson } from './tools/writeJson';

const usage = 'Usage: npm run -s faults [-- --only NAME,...] [--json OUT]';

/** A device of a fault mostly waits for its program, so that several go on at the same time. */
const atOnce = 3;

/** Puts faults into the built program in a browser, and reports what was lost and what was said. */
await runCommand(async () => {
  const { values } = readArguments({ only: { type: 'string' }, json: { type: 'string' } }, usage);
  const wanted = values.only?.split(',') ?? null;
  const chosen = faults.filter(({ name }) => wanted === null || wanted.includes(name));
  if (chosen.length === 0)
    throw new CommandProblem(
      `There is no fault "${values.only}". Choose one of ${faults.map(({ name }) => name).join(', ')}.`,
    );
  ensureBuilt();
  const server = await serveBuild();
  const launch = () => chromium.launch({ executablePath: findBrowser(), args: [...browserSwitches] });
  const browser = await launch();
  const results: FaultResult[] = [];
  try {
    const waiting = [...chosen];
    const work = async () => {
      for (let fault = waiting.shift(); fault !== undefined; fault = waiting.shift()) {
        const own = fault.stopsBrowser === true ? await launch() : null;
        const result = await runFault(fault, own ?? browser, server.url);
        await own?.close();
        results.push(result);
        const { name, survived, lost, sentence } = result;
        console.log(
          `${survived ? 'survived' : 'FAILED'}  ${name}: lost ${lost}; ${sentence ?? 'nothing to say'}`,
        );
      }
    };
    await Promise.all(Array.from({ length: atOnce }, work));
    const order = faults.map(({ name }) => name);
    results.sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name));
  } finally {
    await browser.close();
    await server.close();
  }
  const lost = results.reduce((sum, result) => sum + result.lost, 0);
  if (values.json !== undefined) writeJson(values.json, { faults: results, lost }, 2);
  if (results.some(({ survived }) => !survived)) process.exitCode = 1;
});
