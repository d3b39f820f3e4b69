/** The invented patients of the benchmark by their number, from 0. */
export function seededPseudonym(at: number): string {
  return `Invented Heron ${1000 + at}`;
}
