import { expect, test } from 'vitest';
import lock from '../../../../package-lock.json';
import packageJson from '../../../../package.json';

/** Packages whose versions decide numbers: the network, what runs it, and what reads its pictures. */
const decidesNumbers = /tensorflow|human-models|mediabunny/;

test('packages that decide numbers have exact versions', () => {
  const deciding = Object.entries(packageJson.dependencies).filter(([name]) => decidesNumbers.test(name));
  expect(deciding.length).toBeGreaterThanOrEqual(6);
  for (const [name, version] of deciding) expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
});

test('the lock names those versions and no other, with the SHA-512 of what is to be downloaded', () => {
  const locked = lock.packages as Record<string, { version?: string; integrity?: string; link?: boolean }>;
  for (const [name, version] of Object.entries(packageJson.dependencies)) {
    const entry = locked[`node_modules/${name}`];
    if (decidesNumbers.test(name)) expect(entry?.version, name).toBe(version);
  }
  const downloaded = Object.entries(locked).filter(([path, { link }]) => path !== '' && link !== true);
  expect(downloaded.length).toBeGreaterThan(100);
  for (const [path, { integrity }] of downloaded) expect(integrity, path).toMatch(/^sha512-[\w+/]{86}==$/);
});
