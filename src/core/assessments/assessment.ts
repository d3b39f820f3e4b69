import type { SymmetryUnit } from '../change/limbSymmetry';

/** What a result is in. Points and grades have no percentage between legs. */
export type AssessmentUnit = SymmetryUnit | 'points' | 'grade';

/** How a test is done, so that two of them can be compared. Common practice, no source, but for what is named. */
export interface Protocol {
  /** What is written down with the result, since another choice is another test. */
  fixed: readonly string[];
  steps: readonly string[];
  /** What ends a try. */
  ends: readonly string[];
  tries: { practice: number; counted: number; taken: 'best' | 'mean' };
  /** Between tries, and before the other leg. */
  restSeconds: number;
  /** Whether the camera can count, hold the time, or judge; the rest is entered by hand. */
  camera: 'counts' | 'times' | 'by-hand';
}

/** What somebody else found, of whom. */
export interface PublishedValue {
  population: string;
  /** A phrase with its figures. */
  value: string;
  source: string;
}

/** A test with a fixed protocol, done with each leg, the uninvolved one first, without feedback. */
export interface Assessment {
  id: string;
  name: string;
  unit: AssessmentUnit;
  /** Which way is more able; null where neither is. */
  better: 'more' | 'less' | null;
  /** A result cannot go beyond this: the protocol ends there. Null without an end. */
  most: number | null;
  protocol: Protocol;
  /** A change up to this size may be error; null where no error is known. */
  error: { detectable: number; sameRaterOnly: boolean; isPublished: boolean; source: string } | null;
  /** How far raters or days agree, as published; empty where nothing is known. */
  reliability: readonly string[];
  /** Empty: no norms known. */
  published: readonly PublishedValue[];
  /** What the result does not say, one sentence each. */
  notTold: readonly string[];
}

/** Ends every test besides what it names: the usual rules, for the treating professional to change. */
export const alwaysEnds: readonly string[] = [
  'pain above the agreed limit',
  'the knee gives way or locks',
  'dizziness',
  'the person wants to stop',
];
