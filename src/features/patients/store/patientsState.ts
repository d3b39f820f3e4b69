import type { PracticeStages } from '#documents/library/stages';
import { emptyLog, type CheckedLog } from '#documents/patient/checkedLog';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { QuestionnaireDefinition } from '#documents/questionnaire/questionnaire';
import type { ShownProblem } from '#shell/explainProblem';
import type { PatientRow } from '../rules/listPatients';
import type { EyeTwice, PracticeEye } from '../rules/practiceEyes';
import type { PracticeRepeat } from '../rules/practiceRepeats';
import type { ShownVersion } from './readOtherVersions';

export interface PatientsState {
  /** Those who need a look first; null until they are listed. */
  rows: readonly PatientRow[] | null;
  /** Patients whose sessions are worked out anew; null while nothing is out of date. */
  progress: { done: number; total: number } | null;
  /** Whose page is shown; null while it is read, and where there is none. */
  patient: PatientDocument | null;
  /** Whether the page was asked for a patient who is not kept here. */
  isMissing: boolean;
  /** The plans given to that patient which are still kept here, the latest first. */
  plans: readonly PlanDocument[];
  /** Who did what with that patient; empty until it is checked. */
  log: CheckedLog;
  /** What that patient's record keeps beside the sessions and plans that count. */
  otherVersions: readonly ShownVersion[];
  /** Sets of this practice that were filmed again; null until they are read. */
  repeats: readonly PracticeRepeat[] | null;
  /** What therapists of this practice judged by eye; null until it is read. */
  eyes: readonly PracticeEye[] | null;
  /** What the same therapist judged by eye at two times. */
  twice: readonly EyeTwice[];
  /** Questionnaires that the practice imported on this device. */
  imported: readonly QuestionnaireDefinition[];
  /** The practice's stages; none where they are the program's. */
  stages: PracticeStages;
  /** When that was read, ms since 1970. */
  readAtMs: number;
  /** A table, a bundle or the demo clinic that is being made; null while none is. */
  making: { what: 'table' | 'bundle' | 'demo'; done: number; total: number } | null;
  problem: ShownProblem | null;
}

export const initialPatientsState: PatientsState = {
  rows: null,
  progress: null,
  patient: null,
  isMissing: false,
  plans: [],
  log: emptyLog,
  otherVersions: [],
  repeats: null,
  eyes: null,
  twice: [],
  imported: [],
  stages: {},
  readAtMs: 0,
  making: null,
  problem: null,
};
