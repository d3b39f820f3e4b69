import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Sureness } from '#core/chance/grade';
import { ensurePatient } from '#device/storage/ensurePatient';
import { isOfLibrary } from '#device/storage/keptLibrary';
import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import { practiceStages, type PracticeStages } from '#documents/library/stages';
import type { QuestionnaireRecord } from '#documents/patient/caseEntries';
import { emptyLog } from '#documents/patient/checkedLog';
import { withMark } from '#documents/patient/mergePatients';
import type { PatientDocument, PatientNotes, SessionMark } from '#documents/patient/patientDocument';
import type { PlanDraft } from '#documents/plan/planDraft';
import { buildQuestionnaireResponse } from '#documents/questionnaire/buildQuestionnaireResponse';
import { parseRecording } from '#documents/recording/parseRecording';
import { plainName } from '#documents/schema/plainName';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { explainProblem, type Doing } from '#shell/explainProblem';
import type { Did, SignedLog } from '#shell/signedLog';
import { isoDay } from '#words/dateWords';
import { listPatients } from '../rules/listPatients';
import { errorBetweenDays } from '../rules/practiceRepeats';
import type { PatientIndex } from './createPatientIndex';
import { createPracticeReader } from './createPracticeReader';
import { importQuestionnaire, readImported, removeImported } from './importedQuestionnaires';
import { demoSeed, keepDemo } from './keepDemo';
import { patientBundle } from './patientBundle';
import { initialPatientsState, type PatientsState } from './patientsState';
import { patientRepetitions, patientSessions } from './patientTables';
import { planOfText } from './planOfText';
import { readCameraCount, type CameraCount, type CameraTest } from './readCameraCount';
import { readEyeSet, type EyeSet } from './readEyeSet';
import { readOtherVersions } from './readOtherVersions';
import { readStills, type ReportStills } from './readStills';

/** What every new entry of a record has. */
export interface Entry {
  id: string;
  /** ISO 8601. */
  at: string;
}

export interface PatientsWorld {
  openRepository: () => Promise<OpenedRepository>;
  index: PatientIndex;
  /** Where it is noted who did what. */
  log: Pick<SignedLog, 'entry' | 'check'>;
  /** How sure it has to be before a side is named. */
  sureness: () => Sureness;
  saveFile(fileName: string, text: string): void;
  /** The text of the built-in example's recording. */
  fetchExample(): Promise<string>;
  /** Resolves once the page had time for what else is due. */
  pause(): Promise<void>;
  /** Shows a draft where plans are written. */
  writePlan: (draft: PlanDraft) => Promise<void>;
  newId(): string;
  now(): Date;
}

/** The patients of this device. No action throws or rejects: what goes wrong is in the state. */
export interface Patients {
  readonly store: StoreApi<PatientsState>;
  /** To be called when the list appears: lists everybody at once, then works out what is out of date. */
  enter(): Promise<void>;
  /** To be called when the list disappears. */
  leave(): void;
  /** Reads whom a page is about. */
  open(id: string): Promise<void>;
  saveNotes(notes: PatientNotes): Promise<void>;
  /** Marks a session of the open patient as viewed or settled. */
  mark(sessionId: string, state: SessionMark['state']): Promise<void>;
  /**
   * Adds to the open patient's record; `newId` is for what is more than one entry.
   *
   * @param did  what of it is signed; nothing where left out
   */
  record(
    change: (patient: PatientDocument, entry: Entry, newId: () => string) => PatientDocument,
    did?: (entry: Entry) => Did,
  ): Promise<void>;
  /** Signs what is only noted as done, such as that a note is put away. */
  sign(did: Did): Promise<void>;
  /** Keeps a questionnaire of FHIR R4 on this device, to be filled in for any patient. */
  importQuestionnaire(file: File): Promise<void>;
  /** What was answered stays. */
  removeQuestionnaire(url: string): Promise<void>;
  /** Saves the answers of a questionnaire as a FHIR R4 QuestionnaireResponse. */
  saveResponse(record: QuestionnaireRecord): void;
  /** Opens a draft in plan writing, in place of the one there, which can be had back by undo. */
  writePlan(draft: PlanDraft): Promise<void>;
  /** @returns  the id of the patient with that pseudonym, who is added where there is none; null where that fails */
  add(pseudonym: string): Promise<string | null>;
  /** Saves a table of everything of the open patient as CSV: a row a repetition, or a row a session. */
  saveTable(rows: 'repetitions' | 'visits'): Promise<void>;
  /** Saves everything of the open patient with the report as a bundle of HL7 FHIR R4. */
  saveBundle(): Promise<void>;
  /** The last set with a video, with its best and its worst repetition; null without one. */
  readStills(sessions: readonly ListedSession[]): Promise<ReportStills | null>;
  /** A set of the open patient to be judged by eye; null where its video is no longer kept, or it can't be read. */
  readEyeSet(sessions: readonly ListedSession[], recordingId: string): Promise<EyeSet | null>;
  /** The result of a test from a recording; null where it is no longer kept, or it can't be read. */
  readCameraCount(recordingId: string, test: CameraTest): Promise<CameraCount | null>;
  /** Keeps the demo clinic, whose patients are invented. */
  loadDemo(): Promise<void>;
  dismissProblem(): void;
}

export function createPatients(world: PatientsWorld): Patients {
  const { openRepository, index, log, writePlan, sureness, pause, newId, now } = world;
  const store = createStore<PatientsState>(() => initialPatientsState);
  const { getState: get, setState: set } = store;
  const practice = createPracticeReader(index);
  let shown: AbortController | null = null;
  let watched: Repository | null = null;
  let isDue = false;
  /** The last look at everybody; it never rejects. */
  let looking = Promise.resolve();

  const attempt = async (doing: Doing, work: (kept: Repository) => Promise<void>) => {
    try {
      const { repository } = await openRepository();
      watch(repository);
      await work(repository);
    } catch (error) {
      set({ problem: explainProblem(error, doing) });
    }
  };
  const list = async () => {
    const { patients, overviews } = await index.list();
    practice.know(patients);
    set({ rows: listPatients(patients, overviews, now().getTime()) });
  };
  const look = () =>
    (looking = attempt('list', async () => {
      const mine = shown;
      await list();
      if (mine === null) return;
      const wasOutdated = await index.refresh((done, total) => {
        if (mine === shown) set({ progress: { done, total } });
      }, mine.signal);
      if (mine !== shown) return;
      if (wasOutdated) await list();
      set({ progress: null });
    }));
  const read = (id: string) =>
    attempt('open', async (kept) => {
      const { patients, plans } = kept;
      const patient = await patients.find(id);
      const texts = await Promise.all(
        (patient?.plans ?? []).map((given) => plans.find(given.id).catch(() => null)),
      );
      const found = texts.map(planOfText).filter((plan) => plan !== null);
      set({ patient, isMissing: patient === null, plans: found.reverse(), readAtMs: now().getTime() });
      if (patient !== null)
        set({ log: await log.check(patient), otherVersions: await readOtherVersions(kept, patient) });
      set(await practice.read(kept));
      set({ imported: readImported(await kept.notes.read()), stages: await readStages(kept) });
    });
  /** What changes while it is shown, here or in another tab, is shown at once. */
  const watch = (kept: Repository) => {
    if (kept === watched) return;
    watched = kept;
    kept.subscribe((change) => {
      practice.follow(change);
      if (isDue || (change.kind === 'notes' && !isOfLibrary(change))) return;
      isDue = true;
      // Most of what changes while somebody is worked out is the working out itself: one look afterwards sees it all.
      void looking.then(() => {
        setTimeout(() => {
          isDue = false;
          if (shown !== null) void look();
          const { patient } = get();
          if (patient !== null) void read(patient.id);
        }, 0);
      });
    });
  };
  const update = (change: (patient: PatientDocument) => PatientDocument, did?: Did) =>
    attempt('keep', async ({ patients }) => {
      const { patient } = get();
      if (patient === null) return;
      const added = did === undefined ? [] : [await log.entry(patient, did)];
      const updated = await patients.update(patient.id, (now) => {
        const changed = change(now);
        return changed === now ? now : { ...changed, log: [...changed.log, ...added] };
      });
      set({ patient: updated, isMissing: updated === null });
      if (updated !== null && added.length > 0) set({ log: await log.check(updated) });
    });

  const making = async (
    what: NonNullable<PatientsState['making']>['what'],
    doing: Doing,
    work: (kept: Repository, onProgress: (done: number, total: number) => Promise<void>) => Promise<void>,
  ) => {
    if (get().making !== null) return;
    set({ making: { what, done: 0, total: 0 }, problem: null });
    await attempt(doing, (kept) =>
      work(kept, (done, total) => {
        set({ making: { what, done, total } });
        return pause();
      }),
    );
    set({ making: null });
  };

  return {
    store,
    saveTable: (rows) =>
      making('table', 'save', async (kept, onProgress) => {
        const { patient } = get();
        if (patient === null) return;
        const sessions = await index.sessionsOf(patient.pseudonym);
        const text =
          rows === 'visits'
            ? patientSessions(sessions, patient.note)
            : await patientRepetitions(kept, sessions, sureness(), onProgress);
        world.saveFile(`overfoot-${rows}-${isoDay(now().toISOString())}.csv`, text);
      }),
    saveBundle: () =>
      making('bundle', 'save', async (kept, onProgress) => {
        const { patient, plans, repeats, stages, readAtMs } = get();
        if (patient === null) return;
        const sessions = await index.sessionsOf(patient.pseudonym);
        const reported = {
          patient,
          plans,
          sessions,
          nowMs: readAtMs,
          error: errorBetweenDays(repeats),
          stages,
        };
        const text = await patientBundle(kept, reported, onProgress);
        world.saveFile(`overfoot-fhir-${isoDay(now().toISOString())}.json`, text);
      }),
    async readStills(sessions) {
      let stills: ReportStills | null = null;
      await attempt('read', async (kept) => {
        stills = await readStills(kept, sessions);
      });
      return stills;
    },
    async readEyeSet(sessions, recordingId) {
      let found: EyeSet | null = null;
      await attempt('read', async (kept) => {
        found = await readEyeSet(kept, sessions, recordingId);
      });
      return found;
    },
    async readCameraCount(recordingId, test) {
      let found: CameraCount | null = null;
      await attempt('read', async (kept) => {
        found = await readCameraCount(kept, recordingId, test);
      });
      return found;
    },
    loadDemo: () =>
      making('demo', 'keep', async (kept, onProgress) => {
        const example = parseRecording(await world.fetchExample());
        await keepDemo(
          kept,
          { example, nowMs: now().getTime(), seed: demoSeed },
          (pseudonym) => index.sessionsOf(pseudonym),
          onProgress,
        );
      }),
    enter() {
      shown?.abort();
      shown = new AbortController();
      set({ patient: null, plans: [], log: emptyLog, otherVersions: [], isMissing: false });
      return look();
    },
    leave() {
      shown?.abort();
      shown = null;
      set({ progress: null });
    },
    open(id) {
      if (get().patient?.id !== id)
        set({ patient: null, plans: [], log: emptyLog, otherVersions: [], isMissing: false });
      return read(id);
    },
    saveNotes: (notes) => update((patient) => ({ ...patient, ...notes, changedAt: now().toISOString() })),
    mark: (visitId, state) =>
      update(
        (patient) => {
          const marks = withMark(patient.marks, { visitId, state, at: now().toISOString() });
          return marks === patient.marks ? patient : { ...patient, marks };
        },
        state === 'settled' ? { what: 'session-settled', about: visitId } : undefined,
      ),
    record(change, did) {
      const entry = { id: newId(), at: now().toISOString() };
      return update((patient) => change(patient, entry, newId), did?.(entry));
    },
    sign: (did) => update((patient) => ({ ...patient }), did),
    importQuestionnaire: (file) =>
      attempt('open', async ({ notes }) => {
        set({ problem: null });
        set({ imported: await importQuestionnaire(notes, file) });
      }),
    removeQuestionnaire: (url) =>
      attempt('delete', async ({ notes }) => set({ imported: await removeImported(notes, url) })),
    saveResponse(record) {
      const { patient } = get();
      if (patient === null) return;
      const response = buildQuestionnaireResponse(record, patient.pseudonym);
      world.saveFile(`overfoot-questionnaire-${record.on}.json`, JSON.stringify(response, null, 2));
    },
    writePlan: (draft) => attempt('open', () => writePlan(draft)),
    async add(pseudonym) {
      let id: string | null = null;
      await attempt('keep', async (kept) => {
        id = (await ensurePatient(kept, plainName(pseudonym), { newId, now })).id;
      });
      return id;
    },
    dismissProblem: () => set({ problem: null }),
  };
}

/** The practice's stages; where they can't be read, which plan writing says, the program's are used. */
async function readStages({ library }: Repository): Promise<PracticeStages> {
  try {
    return practiceStages((await library.read()).library.stages);
  } catch {
    return {};
  }
}
