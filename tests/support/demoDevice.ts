import { readFileSync } from 'node:fs';
import { usualSureness } from '#core/chance/grade';
import { ownError } from '#core/reliability/ownError';
import { createRepository } from '#device/storage/createRepository';
import { createMarks } from '#device/storage/marks';
import { createMemoryRecords } from '#device/storage/memoryRecords';
import { createMemoryVideos } from '#device/storage/memoryVideos';
import { parsePlan } from '#documents/plan/parsePlan';
import { parseRecording } from '#documents/recording/parseRecording';
import type { ReportCase } from '#features/patients/rules/report/reportFacts';
import { createPatientIndex } from '#features/patients/store/createPatientIndex';
import { demoSeed, keepDemo } from '#features/patients/store/keepDemo';

/** The demo clinic kept on a device, with what a report of each patient is made from. */
export async function openDemoDevice(nowMs = Date.parse('2026-06-01T10:00:00.000Z')) {
  const kept = createRepository({
    records: createMemoryRecords(),
    videos: createMemoryVideos(),
    lasting: { records: false, videos: false },
    marks: createMarks(undefined),
  });
  const example = parseRecording(readFileSync('fixtures/example.session.json', 'utf8'));
  const index = createPatientIndex({
    openRepository: () => Promise.resolve({ repository: kept, problem: null }),
    sureness: () => usualSureness,
    newId: () => crypto.randomUUID(),
    now: () => new Date(nowMs),
  });
  await keepDemo(kept, { example, nowMs, seed: demoSeed }, (pseudonym) => index.sessionsOf(pseudonym));
  const { found } = await kept.patients.list();
  const cases: ReportCase[] = [];
  for (const { id, pseudonym } of found) {
    const sessions = await index.sessionsOf(pseudonym);
    const patient = (await kept.patients.find(id))!;
    const plans = await Promise.all(
      patient.plans.map(async (plan) => parsePlan((await kept.plans.find(plan.id))!)),
    );
    cases.push({ patient, plans: plans.reverse(), sessions, nowMs, error: ownError([]) });
  }
  return { kept, cases };
}
