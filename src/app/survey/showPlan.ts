/** Where the plan stands in the page. */
export const PLAN = 'plan';

/** On a phone the plan may have been scrolled away; elsewhere it is always in sight. */
export function showPlan(): void {
  document.getElementById(PLAN)?.scrollIntoView({ block: 'nearest' });
}
