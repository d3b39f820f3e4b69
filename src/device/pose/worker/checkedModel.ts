import { io } from '@tensorflow/tfjs';
import { weightDigests } from '../weightDigests';
import { sha256Hex } from './sha256Hex';

/** A file of a network that is missing, or not the one that this program was made with. */
export class OtherWeights extends Error {}

/**
 * A network from its two files, each compared with its SHA-256 before anything is done with it: changed weights
 * give other angles without a word.
 *
 * @param name  such as 'blazepose-full'
 */
export function checkedModel(assetsUrl: string, name: string): io.IOHandler {
  return {
    async load() {
      const [topology, weights] = await Promise.all([
        fetchChecked(assetsUrl, `${name}.json`),
        fetchChecked(assetsUrl, `${name}.bin`),
      ]);
      const model = JSON.parse(new TextDecoder().decode(topology)) as io.ModelJSON;
      return io.getModelArtifactsForJSON(model, (manifest) =>
        Promise.resolve([io.getWeightSpecs(manifest), weights]),
      );
    },
  };
}

const again = 'Reload the page; if it happens again, tell whoever runs this site.';

/** @throws OtherWeights  where it is missing, or where its digest is another one */
async function fetchChecked(assetsUrl: string, file: string): Promise<ArrayBuffer> {
  const answer = await fetch(`${assetsUrl}models/${file}`);
  if (!answer.ok) throw new OtherWeights(`The pose network’s file ${file} is missing. ${again}`);
  const bytes = await answer.arrayBuffer();
  if ((await sha256Hex(bytes)) !== weightDigests[file]) {
    throw new OtherWeights(
      `The pose network’s file ${file} is not the one that this version measures with, so nothing is measured. ${again}`,
    );
  }
  return bytes;
}
