import type { MissingReason } from '#core/measurement/curve';
import type { MeasureId } from '#core/measures/measures';
import type { SignId } from '#core/safety/signs';
import type { Direction } from '#core/scoring/deciding';
import type { PainMoment } from '#documents/plan/cautions';
import type { EndReason, Settlement, SilenceReason } from '#documents/session/sessionDocument';

/** A stop whose reason is no finding by itself. */
export type StopReason = Exclude<EndReason, 'sign'>;

/** Something in a session that needs a look before the patient walks in. */
export type Finding =
  /** Warning signs that were said to apply, so that nothing was done. */
  | { kind: 'signs'; signs: SignId[] }
  | { kind: 'stopped'; reason: StopReason; fell: boolean | null; hasBegun: boolean }
  /** Why nothing was done for so many days, as the person says. */
  | { kind: 'silent'; reason: SilenceReason; days: number }
  /** What it lists was done without filming, as the person says. */
  | { kind: 'unfilmed' }
  /** The most pain above the limit with which they went on, and how many times they did. */
  | { kind: 'went-on'; score: number; limit: number; times: number }
  /** The highest score, and when it was given. */
  | { kind: 'pain-above-limit'; score: number; limit: number; when: PainMoment }
  | { kind: 'pain-risen'; from: number; to: number; when: Exclude<PainMoment, 'before'> }
  /** Signs that were chosen, and then said to be a mistake. */
  | { kind: 'taken-back'; signs: SignId[] }
  /** What was said in an earlier session, and a professional has cleared since, as the patient says. */
  | { kind: 'says-cleared'; who: string }
  /** Who says that what was said in this session is settled. */
  | { kind: 'settled'; by: Settlement['by']; who: string; at: string }
  /** Who opened it again after it had been settled. */
  | { kind: 'reopened'; who: string; at: string }
  | { kind: 'cut-short'; sets: number; firstReason: string }
  /** Sets in which it looks as if the other leg worked. */
  | { kind: 'side-doubtful'; sets: number }
  /** The ways the knee went, and the other measures that left their limits; `probable`: how many only probably did. */
  | {
      kind: 'out-of-line';
      repetitions: number;
      probable: number;
      ofMeasured: number;
      ways: Direction[];
      measures: MeasureId[];
    }
  /** Most that were measured were too close to a limit to tell. */
  | { kind: 'mostly-untold'; repetitions: number; ofMeasured: number }
  /** The view was too poor for this many repetitions. */
  | { kind: 'not-measured'; repetitions: number; of: number; reason: MissingReason | null }
  /** Recorded sets in which no complete repetition was found. */
  | { kind: 'nothing-found'; sets: number }
  | { kind: 'unreadable'; sets: number }
  | { kind: 'sets-missing'; done: number; of: number }
  /** Sets whose careful measuring from the video is still to come. */
  | { kind: 'waiting'; sets: number };
