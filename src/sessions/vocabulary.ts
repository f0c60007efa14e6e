/** The words of sessions, as they stand in the database and the API. */

/** Every visit kind is an exposure when a lot touches the client. */
export const visitKinds = [
  'patch test',
  'first session',
  'touch-up',
  'refresh',
  'correction',
  'lightening',
  'training',
] as const;
export type VisitKind = (typeof visitKinds)[number];

export const bodyPlaces = [
  'brows',
  'upper eyelids',
  'lower eyelids',
  'lips',
  'areola',
  'scalp',
  'other',
] as const;
export type BodyPlace = (typeof bodyPlaces)[number];

export const sessionStates = ['planned', 'in setup', 'completed', 'cancelled', 'not attended'] as const;
export type SessionState = (typeof sessionStates)[number];

export const verdicts = ['admitted', 'warned', 'refused', 'question'] as const;
export type Verdict = (typeof verdicts)[number];

/** How the lot of a use was known. */
export const knownBy = ['own label', "maker's symbol", 'typed', 'picked from a list'] as const;
export type KnownBy = (typeof knownBy)[number];
