import { type RetentionSpan, retentionEnd, retentionRuns } from './retention-end.js';

/**
 * Why erasure is asked for: the grounds of GDPR Art. 17(1)(a) to (e) [P], or the studio's own motion once it need not
 * keep the record any longer.
 */
export const erasureGrounds = [
  'no longer necessary',
  'consent withdrawn',
  'objection',
  'unlawful processing',
  'erasure required by law',
  'retention over',
] as const;
export type ErasureGround = (typeof erasureGrounds)[number];

/** By what a person may say that an obstacle does not hold here. Fixed words: they outlive the client's own fields. */
export const erasureOverrides = ['no legal obligation applies', 'the client was told of it'] as const;
export type ErasureOverride = (typeof erasureOverrides)[number];

/** What stands against an erasure. */
export type ErasureObstacleKind =
  | 'retention not chosen'
  | 'legal obligation'
  | 'own retention'
  | 'held lot'
  | 'legal claim';

export interface ErasureObstacle {
  kind: ErasureObstacleKind;
  /** The point of GDPR Art. 17(3) that allows the refusal; null: none, it is the studio's own rule. */
  article: string | null;
  /** What was seen, and what to do. */
  message: string;
  /** Last local day of the floor, for what ends by itself. */
  keptThrough: string | null;
  /** The lots on hold. */
  lotIds: string[];
  /** What was said against it, so that it no longer stands. */
  overriddenBy: ErasureOverride | null;
}

export interface ErasureFacts {
  /** The studio's local day, YYYY-MM-DD. */
  today: string;
  /** How long the studio keeps records; null: it has not said so yet. */
  policy: { years: number; law: string | null } | null;
  /** Local day of the last record of a visit; null: the client was never treated. */
  lastRecordOn: string | null;
  /** Local day on which the client was put on record. */
  addedOn: string;
  /** Lots that touched the client and are on hold, themselves or by what they were made of. */
  heldLotIds: readonly string[];
  /** Legal claims that were noted and have not ended. */
  openClaims: number;
}

export interface ErasureDecision {
  answer: 'erased' | 'refused';
  /** All that was found, also what was overridden. */
  obstacles: ErasureObstacle[];
  /** The floor; null: nothing is to be kept. */
  span: RetentionSpan | null;
}

/** What answers each obstacle; what no word of the studio answers has none. */
export const answeredBy: Record<ErasureObstacleKind, ErasureOverride | null> = {
  'retention not chosen': null,
  'legal obligation': null,
  'own retention': 'no legal obligation applies',
  'held lot': 'the client was told of it',
  'legal claim': null,
};

/**
 * Whether a client is erased. The right to erasure does not reach what is necessary (GDPR Art. 17(3) [P]) to comply with
 * a legal obligation, (b); for public health, (c): someone whom a lot on hold touched must still be found and told; or
 * for legal claims, (e). A floor that no law asks for is no ground to refuse a client: it holds only until someone says
 * that no law applies. On the studio's own motion nothing is overridden.
 */
export function decideErasure(
  ground: ErasureGround,
  overrides: readonly ErasureOverride[],
  facts: ErasureFacts,
): ErasureDecision {
  const ownMotion = ground === 'retention over';
  const from = facts.lastRecordOn ?? (ownMotion ? facts.addedOn : null);
  const span = from === null || facts.policy === null ? null : retentionEnd(from, facts.policy.years);
  const obstacles = [
    ...(from === null ? [] : floorObstacles(span, facts)),
    ...heldObstacles(facts),
    ...claimObstacles(facts),
  ].map((found): ErasureObstacle => {
    const answer = answeredBy[found.kind];
    const overridden = !ownMotion && answer !== null && overrides.includes(answer);
    return { ...found, overriddenBy: overridden ? answer : null };
  });
  const stands = obstacles.some((obstacle) => obstacle.overriddenBy === null);
  return { answer: stands ? 'refused' : 'erased', obstacles, span };
}

type Found = Omit<ErasureObstacle, 'overriddenBy'>;

const notChosen: Found = {
  kind: 'retention not chosen',
  article: null,
  message:
    'This studio has not said how long it must keep the records of its clients, so nothing can be said of this one. Choose a retention preset or years of its own in the settings of the studio, then ask again.',
  keptThrough: null,
  lotIds: [],
};

function floorObstacles(span: RetentionSpan | null, { today, policy, lastRecordOn }: ErasureFacts): Found[] {
  if (span === null || policy === null) return [notChosen];
  if (!retentionRuns(span, today)) return [];
  const years = `${policy.years} ${policy.years === 1 ? 'year' : 'years'}`;
  const until = { keptThrough: span.keptThrough, lotIds: [] };
  // A law on records of visits says nothing of someone who had none.
  if (policy.law === null || lastRecordOn === null) {
    return [
      {
        kind: 'own retention',
        article: null,
        message: `This studio keeps records for ${years}, here through ${span.keptThrough}, and names no law that asks for it. A client who asks may be erased earlier: say "no legal obligation applies".`,
        ...until,
      },
    ];
  }
  return [
    {
      kind: 'legal obligation',
      article: 'GDPR Art. 17(3)(b)',
      message: `The record of the last visit, on ${lastRecordOn}, must be kept for ${years}, through ${span.keptThrough} (${policy.law}). Ask again from ${span.erasableFrom}; if that rule does not bind this studio, correct its settings first.`,
      ...until,
    },
  ];
}

function heldObstacles({ heldLotIds }: ErasureFacts): Found[] {
  if (heldLotIds.length === 0) return [];
  const lots = heldLotIds.length === 1 ? 'A lot' : `${heldLotIds.length} lots`;
  return [
    {
      kind: 'held lot',
      article: 'GDPR Art. 17(3)(c)',
      message: `${lots} that touched this client ${heldLotIds.length === 1 ? 'is' : 'are'} on hold, and the client may have to be found and told. Tell them and say "the client was told of it", or ask again once the hold is released.`,
      keptThrough: null,
      lotIds: [...heldLotIds],
    },
  ];
}

function claimObstacles({ openClaims }: ErasureFacts): Found[] {
  if (openClaims === 0) return [];
  return [
    {
      kind: 'legal claim',
      article: 'GDPR Art. 17(3)(e)',
      message: `${openClaims === 1 ? 'A legal claim is' : `${openClaims} legal claims are`} noted for this client, for which the record is needed. Ask again once it has ended and its end is noted.`,
      keptThrough: null,
      lotIds: [],
    },
  ];
}
