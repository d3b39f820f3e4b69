/** What stands with every patient, plan and recording of the demo. */
export const demoNote =
  'Demo data: the patient, the sessions and all figures are invented; nobody was treated.';
