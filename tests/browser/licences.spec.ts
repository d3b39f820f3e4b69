import { Spec, Validation } from '@cyclonedx/cyclonedx-library';
import { expect, test } from '@playwright/test';
import packageJson from '../../package.json' with { type: 'json' };

test('the start screen leads to the licences of everything that is shipped', async ({ page }) => {
  await page.goto('./');
  const opened = page.waitForEvent('popup');
  await page.getByRole('link', { name: 'Licences' }).click();
  const text = await (await opened).locator('body').innerText();

  // Packages that others bring along, in the page, in its workers and in the service worker, count too.
  const broughtAlong = ['react-aria', 'long', '@tensorflow/tfjs-core', 'workbox-core'];
  for (const name of [...Object.keys(packageJson.dependencies), ...broughtAlong])
    expect(text, name).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+ \\(`, 'm'));
  expect(text).toContain('Copyright The Overfoot authors');
  expect(text).toContain('BlazePose and MoveNet by Google, licensed under the Apache License, Version 2.0');
  expect(text).toContain('SIL OPEN FONT LICENSE Version 1.1');
  expect(text).toContain('Mozilla Public License');
  expect(text).toContain('(the “Software”)'); // Read as UTF-8.
  expect(text).toContain('MoveNet Thunder from singlepose/thunder/4');

  const billText = await (await page.request.get('sbom.cdx.json')).text();
  expect(await new Validation.JsonStrictValidator(Spec.Version.v1dot5).validate(billText)).toBeNull();
  const bill = JSON.parse(billText) as {
    components: { type: string; name: string; version: string; hashes?: object[] }[];
  };
  const libraries = bill.components.filter(({ type }) => type === 'library');
  expect(libraries.length).toBeGreaterThan(40);
  for (const { name, version, hashes } of libraries) {
    expect(text).toContain(`\n${name} ${version} (`);
    expect(hashes, name).toHaveLength(1);
  }
});
