import { weightDigests } from '../../device/pose/weightDigests.ts';

/** A package of which something is in the build. */
export interface ShippedPackage {
  name: string;
  version: string;
  /** SPDX expression. */
  license: string;
  /** As the lock file has it, 'sha512-…' in base64; null where it has none. */
  integrity: string | null;
}

/**
 * What is in the build as a software bill of materials: CycloneDX 1.5, JSON. It has neither time nor serial number,
 * so that the same sources give the same file.
 */
export function billOfMaterials(packages: readonly ShippedPackage[]): object {
  return {
    bomFormat: 'CycloneDX',
    specVersion: '1.5',
    version: 1,
    metadata: { component: { type: 'application', name: 'overfoot', licenses: [licence('Apache-2.0')] } },
    components: [
      ...packages.map(({ name, version, license, integrity }) => ({
        type: 'library',
        'bom-ref': `${name}@${version}`,
        name,
        version,
        purl: `pkg:npm/${name.replace('@', '%40')}@${version}`,
        licenses: [licence(license)],
        ...(integrity === null ? {} : { hashes: [sha512(integrity)] }),
      })),
      ...Object.entries(weightDigests).map(([name, content]) => ({
        type: 'data',
        'bom-ref': `models/${name}`,
        name: `models/${name}`,
        licenses: [licence('Apache-2.0')],
        hashes: [{ alg: 'SHA-256', content }],
      })),
    ],
  };
}

/** An SPDX id, or an expression of several. */
function licence(license: string): object {
  return /^[\w.+-]+$/.test(license) ? { license: { id: license } } : { expression: license };
}

function sha512(integrity: string): object {
  const [, base64 = ''] = /^sha512-(\S+)$/.exec(integrity) ?? [];
  return { alg: 'SHA-512', content: Buffer.from(base64, 'base64').toString('hex') };
}
