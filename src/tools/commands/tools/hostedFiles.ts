import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './projectRoot';

const revalidated = 'no-cache';
const keptForAYear = 'max-age=31536000';

/** One file of each kind, with the type and caching that it should have. */
export function expectedFiles(): [path: string, type: string, keeping: string][] {
  const assets = readdirSync(join(projectRoot, 'dist/assets'));
  const asset = (pattern: RegExp) => `assets/${assets.find((name) => pattern.test(name)) ?? pattern.source}`;
  const script = /^(application|text)\/javascript/.source;
  return [
    ['', '^text/html; charset=utf-8$', revalidated],
    ['licences.txt', '^text/plain; charset=utf-8$', revalidated],
    ['mark.svg', '^image/svg\\+xml', revalidated],
    ['mark-512.png', '^image/png$', revalidated],
    ['sw.js', script, revalidated],
    ['manifest.webmanifest', '^application/manifest\\+json', revalidated],
    ['wasm/tfjs-backend-wasm-threaded-simd.wasm', '^application/wasm$', revalidated],
    ['models/blazepose-full.json', '^application/json', revalidated],
    ['models/blazepose-full.bin', '^application/octet-stream$', revalidated],
    ['example/example.mp4', '^video/mp4$', revalidated],
    [asset(/^index-.*\.js$/), script, keptForAYear],
    [asset(/^poseWorker-.*\.js$/), script, keptForAYear],
    [asset(/^style-.*\.css$/), '^text/css', keptForAYear],
    [asset(/\.woff2$/), '^font/woff2$', keptForAYear],
  ];
}
