/** Begins each line of a remark that names something done in addition to the exercises. */
const mark = '✓ ';

/** Whether a remark says that this was done. */
export function isDoneInRemark(remark: string, name: string): boolean {
  return remark.split('\n').includes(mark + name);
}

/** The remark with or without the line that this was done; what the person wrote stays. */
export function markDone(remark: string, name: string, isDone: boolean): string {
  const others = remark.split('\n').filter((line) => line !== mark + name);
  const kept = others.length === 1 && others[0] === '' ? [] : others;
  return [...(isDone ? [mark + name] : []), ...kept].join('\n');
}

/** What the person wrote themselves. */
export function ownWords(remark: string): string {
  return remark
    .split('\n')
    .filter((line) => !line.startsWith(mark))
    .join('\n')
    .trim();
}
