/** '1 repetition', '6 repetitions'. */
export function repetitionCount(count: number): string {
  return `${count} ${count === 1 ? 'repetition' : 'repetitions'}`;
}
