import { chromium, type Browser, type Page } from '@playwright/test';
import { filmSitToStands, numberedCameraFile } from '../../../tests/support/browser/numberedFilm';
import { smallItem, smallPlan } from '../../../tests/support/smallPlan';
import { cameraSwitches } from './tools/cameraSwitches';
import { CommandProblem } from './tools/commandProblem';
import { ensureBuilt } from './tools/ensureBuilt';
import { openFaultDevice } from './tools/faults/faultDevice';
import { browserSwitches, findBrowser } from './tools/findBrowser';
import { readArguments } from './tools/readArguments';
import { replayJoints } from './tools/replay/replayJoints';
import { runCommand } from './tools/runCommand';
import { serveBuild } from './tools/serveBuild';
import { countObjectUrls, openMeter } from './tools/soak/openMeter';
import { soakGrowth, type SoakMeasure, type SoakSample } from './tools/soak/soakGrowth';
import { measureFile, openReviews, recordSet, usualMs } from './tools/soak/soakRounds';
import { writeJson } from './tools/writeJson';

const usage = 'Usage: npm run -s soak [-- --minutes N] [--json OUT]';

/**
 * Scripts are interpreted: what the engine compiles of busy functions lies in the same heap and grows for an hour, and is
 * none of the program's data.
 */
const notCompiled = '--js-flags=--no-opt --no-maglev --no-sparkplug';
/** Rounds until everything was loaded and cached once. */
const warmUpRounds = 2;

const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;
const asText: Record<SoakMeasure, (value: number) => string> = {
  heapBytes: megabytes,
  buffersBytes: megabytes,
  rendererBytes: megabytes,
  workers: String,
  endedWorkers: String,
  objectUrls: String,
};

/**
 * Uses the built program for a long time: sets at home, files and reviews in a loop, in one tab that is never reloaded.
 * Joints are known, so that a round takes no longer than its film.
 */
await runCommand(async () => {
  const { values } = readArguments({ minutes: { type: 'string' }, json: { type: 'string' } }, usage);
  const minutes = Number(values.minutes ?? 60);
  if (!(minutes > 0)) throw new CommandProblem(`--minutes must be a number above 0. ${usage}`);
  ensureBuilt();
  const film = filmSitToStands([2, 9]);
  const server = await serveBuild();
  const browser = await chromium.launch({
    executablePath: findBrowser(),
    args: [...browserSwitches, ...cameraSwitches(numberedCameraFile(film)), notCompiled],
  });
  try {
    const device = await openFaultDevice(browser, server.url, {
      permissions: ['camera'],
      serviceWorkers: 'block',
    });
    await replayJoints(device.context, film);
    const page = await device.open(countObjectUrls);
    page.setDefaultTimeout(usualMs);
    const samples = await soak(browser, page, minutes);
    const growth = soakGrowth(samples.slice(warmUpRounds));
    for (const [name, of] of Object.entries(growth)) {
      if (of === null) console.log(`${name}: too few rounds to tell`);
      else {
        const text = asText[name as SoakMeasure];
        console.log(
          `${of.flat ? 'flat ' : 'GROWS'}  ${name}: ${text(of.from)} to ${text(of.to)}, ${text(of.slopePerHour)} an hour`,
        );
      }
    }
    const flat = Object.values(growth).every((of) => of?.flat ?? true);
    if (values.json !== undefined)
      writeJson(values.json, { minutes, rounds: samples.length, growth, flat, samples }, 2);
    if (!flat) process.exitCode = 1;
  } finally {
    await browser.close();
    await server.close();
  }
});

async function soak(browser: Browser, page: Page, minutes: number): Promise<SoakSample[]> {
  const meter = await openMeter(browser, page);
  const item = smallItem({ sets: 1, repetitions: 2, feedback: 'every-repetition' });
  const plan = smallPlan({ items: [item] });
  const startMs = Date.now();
  const minute = () => (Date.now() - startMs) / 60_000;
  const samples: SoakSample[] = [];
  while (minute() < minutes) {
    await recordSet(page, plan);
    await measureFile(page);
    await openReviews(page);
    const sample = { minute: minute(), ...(await meter.read()) };
    samples.push(sample);
    const { heapBytes, buffersBytes, rendererBytes, workers, endedWorkers, objectUrls } = sample;
    console.log(
      `round ${samples.length}, minute ${sample.minute.toFixed(1)}: heap ${megabytes(heapBytes)}, buffers ${megabytes(buffersBytes)}, renderers ${rendererBytes === null ? 'not told' : megabytes(rendererBytes)}, ${workers} workers, ${endedWorkers} ended ones held, ${objectUrls} object URLs`,
    );
  }
  return samples;
}
