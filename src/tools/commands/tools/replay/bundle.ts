import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { pageSettings } from '#tools/build/pageSettings';

const bundles = new Map<string, Promise<string>>();

/** A script with all that it imports, bundled once. */
export function bundle(script: URL): Promise<string> {
  const path = fileURLToPath(script);
  const known = bundles.get(path) ?? bundleNow(path);
  bundles.set(path, known);
  return known;
}

async function bundleNow(path: string): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'silent',
    resolve: pageSettings.resolve ?? {},
    build: {
      write: false,
      minify: false,
      rolldownOptions: { input: path },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  if (first === undefined || !('output' in first)) throw new Error(`${path} could not be bundled.`);
  return first.output[0].code;
}
