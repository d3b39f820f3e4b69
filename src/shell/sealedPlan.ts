import type { PlanDocument } from '#documents/plan/planDocument';
import { packPlan, sealedToFragment, unpackPlan } from '#documents/plan/planLink';
import { sealByPassphrase, unsealByPassphrase } from './seal';

/**
 * The link of a plan that only the passphrase opens (age, scrypt).
 *
 * @param scryptWorkFactor  log2 of the cost of trying a passphrase; age's default if left out
 */
export async function sealPlanLink(
  plan: PlanDocument,
  passphrase: string,
  scryptWorkFactor?: number,
): Promise<string> {
  const sealed = await sealByPassphrase(passphrase, new Blob([packPlan(plan)]), scryptWorkFactor);
  return sealedToFragment(new Uint8Array(await sealed.arrayBuffer()));
}

/** @throws Problem  where the passphrase is another one, or what it opens is no plan */
export async function unsealPlan(sealed: Uint8Array<ArrayBuffer>, passphrase: string): Promise<PlanDocument> {
  const opened = await unsealByPassphrase(passphrase, new Blob([sealed]));
  return unpackPlan(new Uint8Array(await opened.arrayBuffer()));
}
