import { describe, expect, it } from 'vitest';
import { findTask, taskIds } from '#core/exercises/tasks';

describe('findTask(id)', () => {
  it.each(taskIds)('knows %s by its own id', (id) => {
    const task = findTask(id);
    expect(task.id).toBe(id);
    expect(task.sideHint).toMatch(/^[A-Z].*\.$/);
  });

  it('gives every task a name of its own', () => {
    expect(new Set(taskIds.map((id) => findTask(id).name)).size).toBe(taskIds.length);
  });
});
