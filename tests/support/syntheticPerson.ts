import { keypointCount, keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { buildKeypointTrack, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { skinToJoint } from '#core/measurement/hipsAtJoint';
import { otherSide, type Side } from '#core/protocol/side';
import { seededRandom } from '#core/seededRandom';
import { pinholeCamera, upright, type CameraSettings, type PicturePoint } from './pinholeCamera';
import { distance, plus, vector, type Vector } from './space';
import { inwardAngleDeg, poseBody, poseLeg, type Body, type Posture } from './stickBody';
import { postureOf, shapeOf, type Motion, type SyntheticTask } from './taskMotion';
import { buildTimeline, type EventTimes, type PlannedScene } from './timeline';

/** A stretch of time in which something goes wrong, ms of the film. */
export interface Span {
  fromMs: number;
  untilMs: number;
}

/** Who does what, and how it is filmed; all that is left out takes the usual value. */
export interface Scene extends Omit<PlannedScene, 'shape'> {
  task: SyntheticTask;
  side: Side;
  bodyHeightM: number;
  camera: Partial<CameraSettings>;
  rateHz: number;
  /** Frame times are off by up to this share of the frame interval either way, below 0.5. */
  unevenness: number;
  /** Where the film starts and ends within the scene; frames outside were never filmed. */
  filmed: Span;
  /** Frames that were lost. */
  dropped: readonly Span[];
  /** Share of single frames lost at random. */
  droppedShare: number;
  /** Standard deviation of each coordinate of each point, px. */
  noisePx: number;
  seed: number;
  /** Joints that the network guesses wrongly and is unsure of. */
  unseen: readonly (Span & { joint: KeypointName })[];
  /** Times at which the network follows a smaller person who stands at the edge of the picture. */
  somebodyElse: readonly Span[];
}

/** A repetition as it truly was; times in ms of the film, null where it does not happen or was not filmed. */
export interface TrueRepetition {
  completeness: 'complete' | 'partial' | 'cut-at-start' | 'cut-at-end';
  events: { [name in keyof EventTimes]: number | null };
  /** Extremes while the leg is loaded and filmed: seat-off to seat contact, or start to end of a dip; degrees. */
  frontal: TrueExtremes;
  picture: TrueExtremes;
}

export interface TrueExtremes {
  maxDeg: number;
  maxAtMs: number;
  minDeg: number;
  minAtMs: number;
}

/** What is true of one frame. */
export interface TrueFrame {
  timeMs: number;
  /** Every joint: m, y up, the person faces +z, their left at +x. */
  places: Body;
  /** Where an unerring eye sees it, px. */
  points: Record<KeypointName, PicturePoint>;
  /** Knee angle square to the body's front and in the picture, degrees, inward positive. */
  frontalDeg: Record<Side, number>;
  pictureDeg: Record<Side, number>;
}

export interface Film {
  track: KeypointTrack;
  /** One a frame of the track. */
  frames: TrueFrame[];
  /** In order of time; false starts are none. */
  readonly repetitions: TrueRepetition[];
}

const usual = {
  task: 'single-leg-squat',
  side: 'left',
  bodyHeightM: 1.7,
  repetitions: [{ peakDeg: 4 }, { peakDeg: 13 }, { peakDeg: 8 }],
  restMs: 900,
  walkInFrom: 0,
  walkOutTo: 0,
  pelvicDropDeg: 0,
  trunkSideDeg: 0,
  toeOutDeg: 7,
  standingDeg: 0,
  camera: {},
  rateHz: 30,
  unevenness: 0,
  filmed: { fromMs: 0, untilMs: Infinity },
  dropped: [],
  droppedShare: 0,
  noisePx: 0,
  seed: 1,
  unseen: [],
  somebodyElse: [],
} satisfies Scene;

/** Confidences as the network gives them. */
const scores = { seen: 0.95, outside: 0.6, unseen: 0.2 };
/** With fewer of the 33 points in the picture nobody is found. */
const fewestPoints = 11;
/** Peaks are true to the instant, whatever the frame rate: the scene is sampled this often, ms. */
const fineMs = 10;

/**
 * Films a stick person who does a task with a known alignment.
 *
 * @returns  the joints as the pose network would give them, and what was true
 */
export function filmPerson(wishes: Partial<Scene> = {}): Film {
  const scene: Scene = { ...usual, ...wishes };
  const timeline = buildTimeline({ ...scene, shape: shapeOf(scene.task) });
  const camera = { ...upright, ...scene.camera };
  const project = pinholeCamera(camera);
  const look = (sceneMs: number): TrueFrame => {
    const places = bodyOf(scene, timeline.motionAt(sceneMs));
    return {
      timeMs: sceneMs - scene.filmed.fromMs,
      places,
      // Only when asked for: few tests use them.
      get points() {
        return mapPoints((name) => project(places[name]));
      },
      get frontalDeg() {
        return bothKnees((name) => places[name]);
      },
      get pictureDeg() {
        return bothKnees((name) => inPicture(project(places[name])));
      },
    };
  };
  const lookAtKnee = (sceneMs: number): TrueKnee => {
    const leg = legOf(scene, timeline.motionAt(sceneMs));
    const seen = leg.map(project).map(inPicture);
    return {
      timeMs: sceneMs - scene.filmed.fromMs,
      frontalDeg: inwardAngleDeg(leg, scene.side),
      pictureDeg: inwardAngleDeg(seen, scene.side),
    };
  };
  const filmed: Span = {
    fromMs: scene.filmed.fromMs,
    untilMs: Math.min(scene.filmed.untilMs, timeline.endMs),
  };
  const frames = frameTimes(scene, filmed).map(look);
  const truths = () =>
    timeline.repetitions.flatMap(({ completeness, events }) => {
      const repetition = trueRepetition(events, filmed, lookAtKnee);
      return repetition === null ? [] : [{ ...repetition, completeness: repetition.cut ?? completeness }];
    });
  let repetitions: TrueRepetition[] | null = null;
  return {
    track: observe(frames, scene, camera, project),
    frames,
    // Only when asked for, since dense sampling takes longer than the filming.
    get repetitions() {
      return (repetitions ??= truths());
    },
  };
}

/** What one instant of somebody's movement looks like, remembered: bodies rest, and are filmed from many places. */
function poseOnce<Part>(
  pose: (posture: Posture, side: Side, bodyHeightM: number) => Part,
): (scene: Pick<Scene, 'task' | 'side' | 'bodyHeightM'>, motion: Motion) => Part {
  const posed = new Map<string, Part>();
  return ({ task, side, bodyHeightM }, motion) => {
    const key = [task, side, bodyHeightM, ...Object.values(motion)].join();
    const known = posed.get(key);
    if (known !== undefined) return known;
    if (posed.size === mostPosed) posed.clear();
    const part = pose(postureOf(task, side, motion), side, bodyHeightM);
    posed.set(key, part);
    return part;
  };
}
const mostPosed = 5000;
const bodyOf = poseOnce((posture, _, bodyHeightM) => poseBody(posture, bodyHeightM));
const legOf = poseOnce(poseLeg);

/** The film as a mirror shows it: left and right of the picture changed, and so the person's own sides. */
export function mirrorTrack(track: KeypointTrack): KeypointTrack {
  const from = (index: number) => {
    const frame = Math.floor(index / keypointCount);
    const name = keypointNames[index % keypointCount]!;
    return frame * keypointCount + keypointNames.indexOf(otherSideOf(name));
  };
  return {
    ...track,
    xPx: track.xPx.map((_, index) =>
      track.score[from(index)] === 0 ? 0 : track.widthPx - track.xPx[from(index)]!,
    ),
    yPx: track.yPx.map((_, index) => track.yPx[from(index)]!),
    score: track.score.map((_, index) => track.score[from(index)]!),
  };
}

function otherSideOf(name: KeypointName): KeypointName {
  return name.replace(/left|right/, (side) => otherSide(side as Side)) as KeypointName;
}

function frameTimes(scene: Scene, filmed: Span): number[] {
  const random = seededRandom(scene.seed + 101);
  const intervalMs = 1000 / scene.rateHz;
  const count = Math.floor((filmed.untilMs - filmed.fromMs) / intervalMs + 1e-6) + 1;
  const timesMs = Array.from({ length: count }, (_, frame) => {
    const offMs = scene.unevenness * intervalMs * (2 * random.uniform() - 1);
    return Math.max(filmed.fromMs, filmed.fromMs + frame * intervalMs + offMs);
  });
  return timesMs.filter(
    (sceneMs) => !within(scene.dropped, sceneMs - filmed.fromMs) && random.uniform() >= scene.droppedShare,
  );
}

/** Where the networks mark the hips: on the skin in front of the joints. */
function markOfHip(places: Body, side: Side): Vector {
  const ahead = skinToJoint * distance(places[`${side}_knee`], places[`${side}_ankle`]);
  return plus(places[`${side}_hip`], vector(0, 0, ahead));
}

/** The points of each frame with the network's errors, unsureness and mistakes. */
function observe(
  frames: readonly Pick<TrueFrame, 'timeMs' | 'places'>[],
  scene: Scene,
  { widthPx, heightPx }: CameraSettings,
  project: (place: Vector) => PicturePoint,
): KeypointTrack {
  const { noisePx } = scene;
  const random = seededRandom(scene.seed);
  const rows = frames.map(({ timeMs, places }) => {
    const row = new Float32Array(keypointCount * 3);
    let inPicture = 0;
    const isSomebodyElse = within(scene.somebodyElse, timeMs);
    const unseen = scene.unseen.filter((span) => within([span], timeMs));
    keypointNames.forEach((name, index) => {
      const marked =
        name === 'left_hip'
          ? markOfHip(places, 'left')
          : name === 'right_hip'
            ? markOfHip(places, 'right')
            : places[name];
      let { xPx, yPx } = project(marked);
      if (noisePx > 0) {
        xPx += noisePx * random.gaussian();
        yPx += noisePx * random.gaussian();
      }
      if (isSomebodyElse) {
        xPx = widthPx * 0.12 + 0.55 * (xPx - widthPx / 2);
        yPx = heightPx * 0.45 + 0.55 * (yPx - heightPx / 2);
      }
      const inside = xPx >= 0 && xPx <= widthPx && yPx >= 0 && yPx <= heightPx;
      if (inside) inPicture++;
      let score = inside ? scores.seen : scores.outside;
      if (unseen.some(({ joint }) => joint === name)) {
        xPx += 0.05 * widthPx;
        score = scores.unseen;
      }
      row[index * 3] = xPx;
      row[index * 3 + 1] = yPx;
      row[index * 3 + 2] = score;
    });
    return { timeMs, row: inPicture < fewestPoints ? null : row };
  });
  return buildKeypointTrack(widthPx, heightPx, rows);
}

function trueRepetition(
  planned: EventTimes,
  filmed: Span,
  look: (sceneMs: number) => TrueKnee,
): (Omit<TrueRepetition, 'completeness'> & { cut: 'cut-at-start' | 'cut-at-end' | null }) | null {
  const loaded: Span = {
    fromMs: Math.max(planned.seatOffMs ?? planned.startMs, filmed.fromMs),
    untilMs: Math.min(planned.seatContactMs ?? planned.endMs, filmed.untilMs),
  };
  if (loaded.fromMs >= loaded.untilMs) return null;
  const seen = (sceneMs: number | null) =>
    sceneMs === null || sceneMs < filmed.fromMs || sceneMs > filmed.untilMs ? null : sceneMs - filmed.fromMs;
  const events = Object.fromEntries(Object.entries(planned).map(([name, atMs]) => [name, seen(atMs)]));
  const count = Math.ceil((loaded.untilMs - loaded.fromMs) / fineMs);
  const looks = Array.from({ length: count + 1 }, (_, i) =>
    look(loaded.fromMs + ((loaded.untilMs - loaded.fromMs) * i) / count),
  );
  const cutAtStart = planned.startMs < filmed.fromMs;
  return {
    cut: cutAtStart ? 'cut-at-start' : planned.endMs > filmed.untilMs ? 'cut-at-end' : null,
    events: events as TrueRepetition['events'],
    frontal: extremes(looks, 'frontalDeg'),
    picture: extremes(looks, 'pictureDeg'),
  };
}

/** The working knee's angles at one instant. */
type TrueKnee = Record<'timeMs' | 'frontalDeg' | 'pictureDeg', number>;

function extremes(looks: readonly TrueKnee[], angle: 'frontalDeg' | 'pictureDeg'): TrueExtremes {
  const max = looks.reduce((a, b) => (b[angle] > a[angle] ? b : a));
  const min = looks.reduce((a, b) => (b[angle] < a[angle] ? b : a));
  return { maxDeg: max[angle], maxAtMs: max.timeMs, minDeg: min[angle], minAtMs: min.timeMs };
}

function bothKnees(at: (name: KeypointName) => { x: number; y: number }): Record<Side, number> {
  const knee = (side: Side) =>
    inwardAngleDeg([at(`${side}_hip`), at(`${side}_knee`), at(`${side}_ankle`)], side);
  return { left: knee('left'), right: knee('right') };
}

/** With y up, as angles need it. */
function inPicture({ xPx, yPx }: PicturePoint): { x: number; y: number } {
  return { x: xPx, y: -yPx };
}

function mapPoints<T>(of: (name: KeypointName) => T): Record<KeypointName, T> {
  const mapped: Partial<Record<KeypointName, T>> = {};
  for (const name of keypointNames) mapped[name] = of(name);
  return mapped as Record<KeypointName, T>;
}

function within(spans: readonly Span[], atMs: number): boolean {
  return spans.some(({ fromMs, untilMs }) => atMs >= fromMs && atMs < untilMs);
}
