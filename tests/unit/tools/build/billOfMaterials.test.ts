import { Spec, Validation } from '@cyclonedx/cyclonedx-library';
import { expect, it } from 'vitest';
import { billOfMaterials } from '#tools/build/billOfMaterials';

it('names each package with its licence and the checksum of the lock file, and each file of the networks', () => {
  const integrity = `sha512-${Buffer.alloc(64, 0xab).toString('base64')}`;
  const { components } = billOfMaterials([
    { name: '@a/b', version: '1.2.3', license: 'MIT', integrity },
    { name: 'c', version: '4.5.6', license: '(MIT OR CC0-1.0)', integrity: null },
  ]) as { components: object[] };
  expect(components.slice(0, 2)).toEqual([
    {
      type: 'library',
      'bom-ref': '@a/b@1.2.3',
      name: '@a/b',
      version: '1.2.3',
      purl: 'pkg:npm/%40a/b@1.2.3',
      licenses: [{ license: { id: 'MIT' } }],
      hashes: [{ alg: 'SHA-512', content: 'ab'.repeat(64) }],
    },
    {
      type: 'library',
      'bom-ref': 'c@4.5.6',
      name: 'c',
      version: '4.5.6',
      purl: 'pkg:npm/c@4.5.6',
      licenses: [{ expression: '(MIT OR CC0-1.0)' }],
    },
  ]);
  expect(components.filter((component) => JSON.stringify(component).includes('models/'))).toHaveLength(10);
});

// By the standard's own JSON Schema, as its makers' library brings it.
it('is valid CycloneDX 1.5, and noticed where it is not', async () => {
  const validator = new Validation.JsonStrictValidator(Spec.Version.v1dot5);
  const integrity = `sha512-${Buffer.alloc(64, 0xab).toString('base64')}`;
  const bill = billOfMaterials([
    { name: '@a/b', version: '1.2.3', license: 'MIT', integrity },
    { name: 'c', version: '4.5.6', license: '(MIT OR CC0-1.0)', integrity: null },
  ]);
  expect(await validator.validate(JSON.stringify(bill))).toBeNull();
  const wrong = {
    ...bill,
    components: [{ type: 'library', name: 'd', licenses: [{ license: { id: 'Mine' } }] }],
  };
  expect(await validator.validate(JSON.stringify(wrong))).not.toBeNull();
});
