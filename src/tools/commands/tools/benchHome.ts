import { readFileSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { parsePlan } from '#documents/plan/parsePlan';
import { planToFragment } from '#documents/plan/planLink';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { ensureBuilt } from './ensureBuilt';
import { browserSwitches, findBrowser } from './findBrowser';
import { actAsPatient } from './home/actAsPatient';
import { judgeSpoken, type Spoken } from './home/judgeSpoken';
import { walkToEnd, walkToFirstRepetition, type DayFigures } from './home/walkDay';
import { replayJoints } from './replay/replayJoints';
import { serveBuild } from './serveBuild';

/** A patient's way to the first repetition, what they hear, and what they can read. */
export interface HomeFigures {
  day1: DayFigures;
  /** The next day, on the same device. */
  day2: DayFigures;
  spokenLines: number;
  /** Lines of which less than 80 % was heard. */
  spokenLinesCut: number;
  /** Lines that were heard while the screen asked for something else. */
  spokenLinesContradicting: number;
  /** Those lines. */
  linesAmiss: string[];
  /** Height of the smallest thing shown while working, on a phone 70 mm wide seen from 3 m, minutes of arc. */
  smallestArcMinutes: number;
  /** The same of each thing. */
  arcMinutes: Record<string, number>;
}

const viewport = { width: 390, height: 844 };
const screenMm = 70;
const distanceMm = 3000;
const dayMs = 24 * 3600 * 1000;
const repetitions = 3;
/** Where in the example's film the person stands, sits again, and is about to stand up, s. */
const filmed = { url: 'example/example.mp4', standingS: 2.64, seatedAgainS: 4.6, beforeFirstS: 0.4 };

/**
 * Walks two days with the example's film as camera and the joints that were found in it, in real time: the film stands,
 * sits and moves as the screen asks. No time is taken to read.
 *
 * @param planPath  of a plan whose first task is that of the film
 */
export async function benchHome(recordingPath: string, planPath: string): Promise<HomeFigures> {
  const recording = parseRecording(readFileSync(recordingPath, 'utf8'));
  const plan = parsePlan(readFileSync(planPath, 'utf8'));
  const [item] = plan.items;
  if (item?.kind !== 'repetitions') throw new Error('The example’s plan begins with a hold.');
  const items = [{ ...item, sets: 1, repetitions, tempo: null, feedback: 'every-repetition' as const }];
  const { frameRateHz: rateHz } = recording.video;
  const track = smaller(recordingTrack(recording));
  const { widthPx, heightPx } = track;
  ensureBuilt();
  const server = await serveBuild();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: browserSwitches });
  try {
    const context = await browser.newContext({
      baseURL: server.url,
      viewport,
      bypassCSP: true,
      permissions: ['camera'],
      serviceWorkers: 'block',
    });
    await replayJoints(context, track);
    const open = async (laterMs: number): Promise<Page> => {
      const page = await context.newPage();
      await actAsPatient(page, {
        ...filmed,
        url: server.url + filmed.url,
        rateHz,
        widthPx,
        heightPx,
        laterMs,
      });
      return page;
    };
    const first = await open(0);
    const day1 = await walkToFirstRepetition(first, `./#${planToFragment({ ...plan, items })}`);
    await walkToEnd(first);
    const seen = [await first.evaluate(() => window.patient)];
    await first.close();
    const second = await open(dayMs);
    const day2 = await walkToFirstRepetition(second, './');
    seen.push(await second.evaluate(() => window.patient));
    return { day1, day2, ...figuresOf(seen) };
  } finally {
    await browser.close();
    await server.close();
  }
}

/** The film at half its size: nobody has to be found in it, and a busy machine shows it in time. */
function smaller({ widthPx, heightPx, xPx, yPx, ...rest }: KeypointTrack): KeypointTrack {
  const half = (values: Float32Array) => values.map((px) => px / 2);
  return { ...rest, widthPx: widthPx / 2, heightPx: heightPx / 2, xPx: half(xPx), yPx: half(yPx) };
}

function figuresOf(seen: readonly { spoken: Spoken[]; shownPx: Record<string, number> }[]) {
  // Of the line that is being said as the walk ends, not all is heard.
  const spoken = seen.flatMap((day, index) => (index === 0 ? day.spoken : day.spoken.slice(0, -1)));
  const { cut, contradicting } = judgeSpoken(spoken);
  const arcMinutes: Record<string, number> = {};
  for (const [what, px] of seen.flatMap(({ shownPx }) => Object.entries(shownPx)))
    arcMinutes[what] = Math.min(arcMinutes[what] ?? Infinity, arcMinutesOf((px * screenMm) / viewport.width));
  return {
    spokenLines: spoken.length,
    spokenLinesCut: cut.length,
    spokenLinesContradicting: contradicting.length,
    linesAmiss: [...cut, ...contradicting].map(({ line }) => line),
    smallestArcMinutes: Math.min(...Object.values(arcMinutes)),
    arcMinutes,
  };
}

function arcMinutesOf(heightMm: number): number {
  return (60 * 360 * Math.atan(heightMm / 2 / distanceMm)) / Math.PI;
}
