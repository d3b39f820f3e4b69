import type { ExchangeReport } from './exchangeRecord';
import { ownConcept, patientReference, reference, type Resource } from './fhirCodes';
import { program } from './origin';

/**
 * A report in words as a document: a section for each of its lines, and one that names the sessions.
 *
 * @param at  when it was written, ISO 8601
 */
export function compositionOf(report: ExchangeReport, at: string, sessionIds: readonly string[]): Resource {
  return {
    resourceType: 'Composition',
    id: 'report',
    status: 'final',
    type: ownConcept('document', 'programme-report', 'Report of an exercise programme'),
    subject: patientReference,
    date: at,
    author: [reference('Device', program.id)],
    title: report.title,
    section: [
      ...report.lines.map(({ head, text }) => ({
        ...(head === '' ? {} : { title: head }),
        text: { status: 'additional', div: narrative(text) },
      })),
      ...(sessionIds.length === 0
        ? []
        : [{ title: 'Sessions', entry: sessionIds.map((id) => reference('Procedure', id)) }]),
    ],
  };
}

const opening = '<div xmlns="http://www.w3.org/1999/xhtml"><p>';
const closing = '</p></div>';
const entities = [
  ['&', '&amp;'],
  ['<', '&lt;'],
  ['>', '&gt;'],
] as const;
/** What XML 1.0 cannot hold. */
// eslint-disable-next-line no-control-regex
const unfit = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

function narrative(text: string): string {
  const escaped = entities.reduce(
    (so, [plain, entity]) => so.replaceAll(plain, entity),
    text.replace(unfit, ''),
  );
  return `${opening}${escaped}${closing}`;
}

/** The text of what `narrative` writes. */
export function narrativeText(div: string): string {
  const inner =
    div.startsWith(opening) && div.endsWith(closing) ? div.slice(opening.length, -closing.length) : div;
  return entities.reduceRight((so, [plain, entity]) => so.replaceAll(entity, plain), inner);
}
