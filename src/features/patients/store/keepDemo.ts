import type { Repository } from '#device/storage/repository';
import { demoClinic, type DemoClinicParts } from '#documents/demo/demoClinic';

/** The same invented clinic each time. */
export const demoSeed = 7;

/**
 * Keeps the demo clinic, as if its sessions had come in. Loaded twice on one day, it is there once.
 *
 * @param onProgress  called before each session; what it returns is waited for
 * @throws StorageProblem  'changed' where somebody else is kept under one of its pseudonyms
 */
export async function keepDemo(
  { patients, plans, keepTogether }: Repository,
  parts: DemoClinicParts,
  onProgress: (done: number, total: number) => Promise<void> = () => Promise.resolve(),
): Promise<void> {
  const clinic = demoClinic(parts);
  const total = clinic.reduce((sum, { sessions }) => sum + sessions.length, 0);
  let done = 0;
  for (const { patient, plan, sessions } of clinic) {
    await patients.add(patient);
    await plans.save(plan.id, JSON.stringify(plan), plan.createdAt);
    for (const make of sessions) {
      await onProgress(done++, total);
      const { session, recordings } = make();
      await keepTogether(
        session,
        recordings.map((recording) => ({
          recording,
          visitId: session.id,
          fromVideo: 'impossible',
          video: null,
        })),
      );
    }
  }
}
