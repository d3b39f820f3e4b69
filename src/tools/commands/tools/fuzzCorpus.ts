import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FuzzedParser } from './fuzzParser';
import { projectRoot } from './projectRoot';

const folder = join(projectRoot, 'fixtures/fuzz');
/** Together the documents of a parser stay below this, those aside that broke something. */
const mostCharacters = 80_000;

const pathOf = ({ file }: FuzzedParser) => join(folder, `${file}.json`);

/** Documents that once broke a parser, or that it refuses or accepts in a way of their own. */
export function keptDocuments(parser: FuzzedParser): string[] {
  const path = pathOf(parser);
  return existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as string[]) : [];
}

/** Keeps one that broke something, first of all. */
export function keepFailure(parser: FuzzedParser, text: string): void {
  write(parser, [...new Set([text, ...keptDocuments(parser)])]);
}

/** Keeps more of them, the shortest first, as long as there is room. @returns  how many are kept now */
export function keepKinds(parser: FuzzedParser, texts: Iterable<string>): number {
  const all = new Set(keptDocuments(parser));
  let characters = [...all].join('').length;
  for (const text of [...texts].sort((a, b) => a.length - b.length)) {
    characters += text.length;
    if (characters > mostCharacters) break;
    all.add(text);
  }
  write(parser, [...all]);
  return all.size;
}

function write(parser: FuzzedParser, texts: readonly string[]): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(pathOf(parser), `${JSON.stringify(texts, null, 2)}\n`);
}
