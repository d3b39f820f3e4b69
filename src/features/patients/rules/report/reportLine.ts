/** One line of a report: what it is about, and what it says. */
export interface ReportLine {
  /** Empty for a line that stands by itself. */
  head: string;
  text: string;
}

/** The first line is the title. */
export type Report = readonly ReportLine[];

/** As plain text, a line each, to be pasted anywhere. */
export function reportText(report: Report): string {
  return `${report.map(({ head, text }) => (head === '' ? text : `${head}: ${text}`)).join('\n')}\n`;
}
