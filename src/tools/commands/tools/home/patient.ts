/**
 * In the page of a patient: a camera that films somebody who does what the screen asks, a voice that notes how much was
 * heard of each line, and what can be read from three metres while they work. Bundled and added before the page loads.
 */
import { guidePhases, type GuidePhase } from '#features/home/guide/guideState';
import { drawNumber } from '../replay/pictureNumber';
import type { Spoken } from './judgeSpoken';
import { shownSizes } from './shownSizes';

declare global {
  interface Window {
    /** Put in front of this script by walkHome. */
    filmed: Filmed;
    patient: {
      spoken: Spoken[];
      /** Smallest height on the screen of what was shown while working, by what it was, px. */
      shownPx: Record<string, number>;
    };
  }
}

/** A film of sit-to-stands, and where in it somebody stands and sits, s. */
export interface Filmed {
  url: string;
  rateHz: number;
  widthPx: number;
  heightPx: number;
  standingS: number;
  seatedAgainS: number;
  /** Seated, shortly before the first repetition. */
  beforeFirstS: number;
  /** How much later than now it is, ms. */
  laterMs: number;
}

/** How long somebody takes to do what they are asked, ms: common practice, no source. */
const reactionMs = 700;
/** The pace of a calm voice, 170 words a minute, and its pause after a line, ms: common practice, no source. */
const perWordMs = 60_000 / 170;
const pauseMs = 250;
const everyMs = 50;
const working: readonly GuidePhase[] = ['countdown', 'working', 'finishing'];

const { url, rateHz, widthPx, heightPx, standingS, seatedAgainS, beforeFirstS, laterMs } = window.filmed;
window.patient = { spoken: [], shownPx: {} };

function phaseNow(): GuidePhase | null {
  const shown = document.querySelector<HTMLElement>('main.film')?.dataset['phase'];
  return guidePhases.find((phase) => phase === shown) ?? null;
}

/* The date */
const { now } = Date;
class LaterDate extends Date {
  constructor(...given: [] | [string | number | Date]) {
    super(given[0] ?? now() + laterMs);
  }
  static override now = () => now() + laterMs;
}
Object.defineProperty(window, 'Date', { value: LaterDate });

/* The camera */
const canvas = document.createElement('canvas');
Object.assign(canvas, { width: widthPx, height: heightPx });
const context = canvas.getContext('2d')!;
const video = document.createElement('video');
Object.assign(video, { muted: true, playsInline: true, preload: 'auto', src: url });
video.currentTime = standingS;
const draw = (_: number, { mediaTime }: { mediaTime: number }) => {
  context.drawImage(video, 0, 0, widthPx, heightPx);
  drawNumber(context, Math.round(mediaTime * rateHz), { widthPx, heightPx });
  video.requestVideoFrameCallback(draw);
};
video.requestVideoFrameCallback(draw);
let blink = 0;
// A canvas that nobody draws on gives no pictures.
setInterval(() => {
  context.fillStyle = (blink = 1 - blink) === 0 ? '#000' : '#001';
  context.fillRect(widthPx - 1, heightPx - 1, 1, 1);
}, 50);
navigator.mediaDevices.getUserMedia = () => Promise.resolve(canvas.captureStream(20));
navigator.mediaDevices.enumerateDevices = () => Promise.resolve([]);

/* The person in front of it */
let asked: GuidePhase | null = null;
let untilS = Infinity;
const act: Partial<Record<GuidePhase, () => void>> = {
  ready() {
    untilS = seatedAgainS;
    void video.play();
  },
  working() {
    video.currentTime = beforeFirstS;
    untilS = Infinity;
    void video.play();
  },
  finishing: () => video.pause(),
  placing() {
    video.pause();
    video.currentTime = standingS;
  },
};
setInterval(() => {
  if (video.currentTime >= untilS) video.pause();
  const phase = phaseNow();
  if (phase === asked) return;
  asked = phase;
  const react = phase === null ? undefined : act[phase];
  if (react !== undefined) setTimeout(react, phase === 'finishing' ? 0 : reactionMs);
}, everyMs);

/* The voice */
const waiting: SpeechSynthesisUtterance[] = [];
let current: { utterance: SpeechSynthesisUtterance; noted: Spoken; fromMs: number } | null = null;
const begin = () => {
  const utterance = current === null ? waiting.shift() : undefined;
  if (utterance === undefined) return;
  const lengthMs = pauseMs + perWordMs * utterance.text.split(' ').length;
  const noted: Spoken = { line: utterance.text, lengthMs, spokenMs: 0, inPhaseMs: {} };
  if (utterance.text.trim() !== '') window.patient.spoken.push(noted);
  current = { utterance, noted, fromMs: performance.now() };
};
const end = (isCut: boolean) => {
  const ended = current;
  current = null;
  if (ended === null) return;
  const { utterance } = ended;
  (isCut ? utterance.onerror : utterance.onend)?.call(utterance, new Event('end') as never);
};
setInterval(() => {
  if (current === null) return;
  const { noted, fromMs } = current;
  const heardMs = Math.min(performance.now() - fromMs, noted.lengthMs);
  const phase = phaseNow();
  if (phase !== null) noted.inPhaseMs[phase] = (noted.inPhaseMs[phase] ?? 0) + heardMs - noted.spokenMs;
  noted.spokenMs = heardMs;
  if (heardMs < noted.lengthMs) return;
  end(false);
  begin();
}, everyMs);
const voice = { name: 'Stub', lang: 'en-GB', localService: true, default: true, voiceURI: 'stub' };
const synthesis = {
  getVoices: () => [voice],
  speak(utterance: SpeechSynthesisUtterance) {
    waiting.push(utterance);
    begin();
  },
  cancel() {
    waiting.length = 0;
    end(true);
  },
  addEventListener: () => undefined,
  removeEventListener: () => undefined,
};
class Utterance {
  constructor(readonly text: string) {}
}
Object.defineProperty(window, 'speechSynthesis', { value: synthesis });
Object.defineProperty(window, 'SpeechSynthesisUtterance', { value: Utterance });

/* The eyes */
setInterval(() => {
  const phase = phaseNow();
  if (phase === null || !working.includes(phase)) return;
  const { shownPx } = window.patient;
  for (const { what, heightPx } of shownSizes())
    shownPx[what] = Math.min(shownPx[what] ?? Infinity, heightPx);
}, 1000);
