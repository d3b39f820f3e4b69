import { describe, expect, it } from 'vitest';
import { readPlanLink } from '#documents/plan/planLink';
import { sealPlanLink, unsealPlan } from '#shell/sealedPlan';
import { quickScrypt } from '../../support/quickScrypt';
import { smallPlan } from '../../support/smallPlan';

const passphrase = 'otter river stone lamp';
const plan = smallPlan();

async function sealedOf(fragment: string) {
  const link = readPlanLink(fragment);
  if (!('sealed' in link)) throw new Error('it is not sealed');
  return link.sealed;
}

describe('sealPlanLink(plan, passphrase), unsealPlan(sealed, passphrase)', () => {
  it('give the plan back with the passphrase, and no other', async () => {
    const fragment = await sealPlanLink(plan, passphrase, quickScrypt);
    const sealed = await sealedOf(fragment);
    expect(await unsealPlan(sealed, passphrase)).toEqual(plan);
    await expect(unsealPlan(sealed, 'another river stone lamp')).rejects.toThrow(/passphrase does not open/);
  });

  it('leave nothing of the plan to be read in the link, which still fits in a QR code', async () => {
    const fragment = await sealPlanLink(plan, passphrase, quickScrypt);
    const bytes = Buffer.from(await sealedOf(fragment)).toString('latin1');
    expect(bytes).toMatch(/^age-encryption\.org\/v1\n-> scrypt /);
    expect(bytes).not.toContain(plan.patient);
    // The largest code holds 2953 bytes (ISO/IEC 18004, version 40 with the lowest correction).
    expect(fragment.length).toBeLessThan(2800);
  });
});
