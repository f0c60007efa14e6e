/** The words of recalls, as they stand in the database and the API. */

export const recallKinds = ['recall', 'drill'] as const;
/** A drill is a rehearsal: nothing is held and nobody is told. */
export type RecallKind = (typeof recallKinds)[number];

export const recallStates = ['open', 'closed', 'withdrawn'] as const;
export type RecallState = (typeof recallStates)[number];

export const noticeSources = [
  'pasted',
  'entered',
  'csv',
  'enforcement json',
  'safety gate xml',
  'fetched',
] as const;
export type NoticeSource = (typeof noticeSources)[number];

export const lotDecisions = ['affected', 'not affected'] as const;
export type LotDecision = (typeof lotDecisions)[number];

export const findingResults = ['found', 'not found'] as const;
export type FindingResult = (typeof findingResults)[number];

export const dispositionKinds = ['returned', 'destroyed'] as const;
export type DispositionKind = (typeof dispositionKinds)[number];

export const contactAudiences = ['client', 'artist', 'supplier', 'authority'] as const;
export type ContactAudience = (typeof contactAudiences)[number];

export const contactChannels = ['telephone', 'e-mail', 'letter', 'message', 'in person'] as const;
export type ContactChannel = (typeof contactChannels)[number];

/** The first two and the last end the attempts. */
export const contactOutcomes = ['reached', 'refused', 'no answer', 'message left', 'unreachable'] as const;
export type ContactOutcome = (typeof contactOutcomes)[number];

export type ClosingOutcome = 'closed' | 'withdrawn';

/** What stands against closing. */
export const closingObstacles = [
  'undecided lots',
  'clients not told',
  'containers not found',
  'stock without disposition',
  'pieces unexplained',
] as const;
export type ClosingObstacle = (typeof closingObstacles)[number];

/** Closed although something stood against it, and why. */
export interface ClosingOverride {
  obstacle: ClosingObstacle;
  reason: string;
}
