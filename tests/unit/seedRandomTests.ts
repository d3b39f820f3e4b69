import fc from 'fast-check';
import { inject } from 'vitest';
import type {} from './randomSeed';

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: inject('randomSeed') });
