/** How the part of an address after '#' begins if it carries a plan. */
export const planMarker = 'plan=';

/** Whether the part of an address after '#' carries a plan. */
export function carriesPlan(fragment: string): boolean {
  return fragment.replace(/^#/, '').startsWith(planMarker);
}
