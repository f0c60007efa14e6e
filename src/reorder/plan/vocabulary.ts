/** The words of plans, as they stand in the database and the API. */

export const planStates = ['waiting', 'running', 'done', 'cancelled', 'failed'] as const;
export type PlanState = (typeof planStates)[number];

export const lineDecisions = [
  'order now',
  'order later',
  'order for the appointment',
  'let run out',
  'enough',
  'cannot be ordered',
] as const;
export type LineDecision = (typeof lineDecisions)[number];
