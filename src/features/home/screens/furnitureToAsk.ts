import { findTask } from '#core/exercises/exercises';
import type { PlanItem } from '#documents/plan/planDocument';
import { checkFurniture } from '../placing/checks/checkFurniture';

/** The question whether chair or step stands firm, as long as it is open; null where it is answered or not asked. */
export function furnitureToAsk(item: PlanItem, isFurniturePlaced: boolean): string | null {
  if (item.kind === 'hold') return null;
  const finding = checkFurniture(findTask(item.task), { isFurniturePlaced });
  return finding === null || finding.state === 'good' ? null : finding.sentence;
}
