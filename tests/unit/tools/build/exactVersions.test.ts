import { expect, test } from 'vitest';
import packageJson from '../../../../package.json';

/** Packages whose versions decide numbers: the network, what runs it, and what reads its pictures. */
const decidesNumbers = /tensorflow|human-models|mediabunny/;

test('packages that decide numbers have exact versions', () => {
  const deciding = Object.entries(packageJson.dependencies).filter(([name]) => decidesNumbers.test(name));
  expect(deciding.length).toBeGreaterThanOrEqual(6);
  for (const [name, version] of deciding) expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
});
