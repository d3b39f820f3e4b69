import type { Figure } from './figure/stance';
import type { Fault } from './library/fault';
import type { Preparation } from './preparation';
import type { HoldStage, RepetitionStage } from './stage';

/** Where an exercise should be felt. Common practice, no source. */
export type FeltPlace = 'thigh' | 'buttock' | 'thigh-and-buttock' | 'side-of-trunk';

/** What a task and a hold have in common. What a patient reads and hears of it is in `words/messages`. */
interface CommonDefinition<Id extends string> {
  id: Id;
  /** Where it comes in a treatment: the lowest number first. Common practice, no source. */
  treatmentOrder: number;
  /** What it is for, one sentence for the therapist. */
  purpose: string;
  /** Those of each direction, the most usual first. */
  faults: readonly Fault[];
  /** Where the person should feel it, on the working side; the outer side of the knee is never meant. */
  felt: FeltPlace;
  preparation: Preparation;
  figure: Figure;
}

/** How much at first, for the treating professional to change. */
interface CommonDose {
  sets: number;
  restSeconds: number;
  /** Where the figures come from. */
  source: string;
}

export interface RepetitionDose extends CommonDose {
  /** In one set. */
  repetitions: number;
  /** Good repetitions in a row that a treatment works up to; null where nothing is known of it. */
  worksUpTo: { min: number; max: number } | null;
}

export interface HoldDose extends CommonDose {
  /** In one set; `restSeconds` passes between them too. */
  holds: { count: number; seconds: number };
}

/** What in a task shows how far the body is turned from the camera; see the view folder. */
export type ViewSign = 'thighs' | 'feet' | 'stance-foot' | 'free-shank';

/** A movement whose repetitions can be found and judged. */
export interface TaskDefinition<Id extends string> extends CommonDefinition<Id> {
  kind: 'task';
  /**
   * Where a repetition starts and ends, and where it turns:
   * 'rise': seated, up, seated again; 'dip': standing, down, standing again; 'reach': feet together, the free foot
   * out to the side, together again.
   */
  shape: 'rise' | 'dip' | 'reach';
  /** What sets the working foot apart: it is nearer to the camera, it moves less, or nothing does. */
  workingFoot: 'nearer' | 'stiller' | 'either';
  /** Whether the other foot stays on the floor, standing or sliding. */
  onBothFeet: boolean;
  /**
   * How far from the middle of the hips the toes of the free foot go sideways, share of leg length; 0 where the foot
   * stays close to the body. Common practice, no source.
   */
  freeFootReach: number;
  /** The most trusted first. */
  viewSigns: readonly ViewSign[];
  /** From easier to harder; their figures are common practice, no source. */
  stages: readonly RepetitionStage[];
  /** The exercise, by its id, that comes after the hardest stage; left out where the list just ends. */
  leadsTo?: string;
  dose: RepetitionDose;
}

/** A position that is held for a time; nothing of it is measured but the time. */
export interface HoldDefinition<Id extends string> extends CommonDefinition<Id> {
  kind: 'hold';
  /** From easier to harder; their figures are common practice, no source. */
  stages: readonly HoldStage[];
  dose: HoldDose;
}

/** Source of every dose, order of stages, fault and cue for which no study is named. */
export const commonPractice = 'common practice, no source';
