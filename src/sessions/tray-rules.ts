import { hasEnded } from '../stock/container-transitions.js';
import { earlierExpiring, orderFirstExpired } from '../stock/first-expired.js';
import type { ContainerLifeFacts } from '../stock/opened-life.js';
import { isPast, judgeShelfLife, type ShelfLife } from '../stock/shelf-life.js';
import type { OnKitList } from './on-kit-list.js';
import type { ReasonFacts } from './reason-facts.js';
import { asCandidate, availablePieces, describeThing, type HoldFact, type TrayThing } from './tray-thing.js';

/** Why something is refused, the worst first. */
export const refusalCodes = [
  'recalled',
  'on hold',
  'expired',
  'open too long',
  'practice only',
  'already used',
  'none left',
] as const;
export type RefusalCode = (typeof refusalCodes)[number];

/** What an artist should know of something that may be used, the worst first. */
export const warningCodes = [
  'no date known',
  'date differs from the record',
  'out of date before the touch-up',
  'an earlier-expiring one is here',
  'another bottle is open',
  "another artist's",
  'not on the kit list',
] as const;
export type WarningCode = (typeof warningCodes)[number];

export type QuestionCode = 'another one?' | 'which container?' | 'which lot?';

export interface Reason {
  code: RefusalCode | WarningCode | QuestionCode;
  /** A sentence for the artist: what was seen, what is allowed, what to do. */
  message: string;
  facts: ReasonFacts;
}

export interface TrayFacts {
  thing: TrayThing;
  /**
   * The other containers of the same product; when it is refused and none of those may be used, those of the products
   * that stand for it by their configuration.
   */
  others: readonly TrayThing[];
  /** Use-by in the scanned symbol; null when it has none. */
  symbolUseBy: string | null;
  /**
   * True when the symbol is Lotward's own label: its date is a copy of the record as it stood when it was printed, so the
   * record decides. A maker's symbol is a source of its own.
   */
  symbolIsOwnLabel: boolean;
  /** True when the piece of this serial lies on a tray already or was used. */
  serialTaken: boolean;
  /** Lines of this container on this tray. */
  linesOnTray: number;
  /** True when the artist has said that this is another piece with the same symbol. */
  another: boolean;
  onKitList: OnKitList;
  artistId: string;
  /** Last day of the touch-up window when this visit will have one; else null. */
  touchUpBy: string | null;
  /** True when the symbol tells one piece from another, so that a second one needs no question. */
  hasSerial: boolean;
}

export interface TrayDecision {
  verdict: 'admitted' | 'warned' | 'refused' | 'question';
  reasons: Reason[];
  /** What to take instead of what is refused, or before it. */
  instead: TrayThing | null;
  /** What the screen may offer: opening a sealed bottle, or one piece more. */
  offers: ('open' | 'another')[];
  /** Pieces this scan puts on the tray; 0 for a container, which stays on the shelf's book. */
  piecesAdded: number;
  /** False when the container lies on this tray already. */
  addsLine: boolean;
  life: ShelfLife;
}

/**
 * Judges one scan at setup. Refusals come first, the worst at the front; a question is asked only when nothing refuses.
 *
 * @param at ISO 8601 instant of the scan, by the device
 * @param timeZone IANA time zone of the studio: dates are judged on its local day
 */
export function admit(facts: TrayFacts, at: string, timeZone: string): TrayDecision {
  const { thing } = facts;
  const life = judgeShelfLife(asJudged(facts), at, timeZone);
  const instead = firstUsable(facts.others, at, timeZone);
  const refusals = refusalsOf(facts, life, instead);
  const answer = {
    instead: null,
    offers: [],
    piecesAdded: 0,
    addsLine: false,
    life,
  } satisfies Partial<TrayDecision>;
  if (refusals.length > 0) return { ...answer, verdict: 'refused', reasons: refusals, instead };

  if (thing.stockForm === 'pieces' && facts.linesOnTray > 0 && !facts.another && !facts.hasSerial) {
    return { ...answer, verdict: 'question', reasons: [askAnother(facts)], offers: ['another'] };
  }

  const reasons = warningsOf(facts, life, at, timeZone);
  const earlier = reasons.some((reason) => reason.code === 'an earlier-expiring one is here');
  return {
    ...answer,
    verdict: reasons.length > 0 ? 'warned' : 'admitted',
    reasons,
    instead: earlier ? instead : null,
    offers: thing.stockForm === 'container' && thing.state === 'sealed' ? ['open'] : [],
    piecesAdded: thing.stockForm === 'pieces' ? 1 : 0,
    addsLine: thing.stockForm === 'pieces' || facts.linesOnTray === 0,
  };
}

/** Refusals that are about the client's safety, not about the book: what a use is recorded against. */
export type SafetyRefusal = Exclude<RefusalCode, 'already used' | 'none left'>;

/**
 * The refusals that stand against using a thing at an instant, the worst first; empty: none. For what was used without
 * having been admitted.
 */
export function safetyRefusals(thing: TrayThing, at: string, timeZone: string): SafetyRefusal[] {
  const { status } = judgeShelfLife(thing, at, timeZone);
  const refusals: SafetyRefusal[] = [];
  if (thing.holds.some((hold) => hold.kind === 'recall')) refusals.push('recalled');
  if (thing.holds.some((hold) => hold.kind !== 'recall')) refusals.push('on hold');
  if (isPast(status)) refusals.push(status);
  if (thing.state === 'practice only') refusals.push('practice only');
  return refusals;
}

/** The refusal of something of which nothing usable is here, when no container could even be meant. */
export function noneLeft(label: string, instead: TrayThing | null): Reason {
  const next = instead
    ? `Take ${describeThing(instead)} instead, which is of the same configuration.`
    : 'Take another product, or have it ordered; this was counted as wanted.';
  return {
    code: 'none left',
    message: `Of ${label} nothing that may be used is here. ${next}`,
    facts: { label, ...insteadOf(instead) },
  };
}

/** The earlier of the recorded use-by and the one in the symbol: a person may not be hurt by a slip in the record. */
function asJudged({ thing, symbolUseBy, symbolIsOwnLabel }: TrayFacts): ContainerLifeFacts {
  const { useByLastDay } = thing;
  if (symbolIsOwnLabel) return thing;
  const earlier =
    symbolUseBy !== null && (useByLastDay === null || symbolUseBy < useByLastDay)
      ? symbolUseBy
      : useByLastDay;
  return { ...thing, useByLastDay: earlier };
}

function refusalsOf(facts: TrayFacts, life: ShelfLife, instead: TrayThing | null): Reason[] {
  const { thing } = facts;
  const reasons: Reason[] = [];
  const add = (code: RefusalCode, seen: string, more: ReasonFacts = {}) =>
    reasons.push({
      code,
      message: `${seen} ${instead ? `Take ${describeThing(instead)} instead.` : 'No other one that may be used is here.'}`,
      facts: { label: thing.label, lotCode: thing.lotCode, ...insteadOf(instead), ...more },
    });

  for (const hold of thing.holds.filter((hold) => hold.kind === 'recall').slice(0, 1)) {
    add('recalled', `${describeThing(thing)} is recalled${onWhat(hold)}. Put it aside; do not use it.`, {
      reason: hold.reason,
      on: hold.on,
    });
  }
  for (const hold of thing.holds.filter((hold) => hold.kind !== 'recall').slice(0, 1)) {
    add(
      'on hold',
      `${describeThing(thing)} is on hold (${hold.reason})${onWhat(hold)} until it is released.`,
      {
        reason: hold.reason,
        on: hold.on,
      },
    );
  }
  if (life.status === 'expired') {
    const { symbolUseBy, symbolIsOwnLabel } = facts;
    const misread =
      !symbolIsOwnLabel &&
      symbolUseBy !== null &&
      thing.useByLastDay !== null &&
      symbolUseBy < thing.useByLastDay
        ? ` The record says ${thing.useByLastDay}, but the earlier date counts; if the record was rightly corrected, scan Lotward's own label.`
        : '';
    add('expired', `${describeThing(thing)} expired: its use-by was ${life.lastDay}.${misread}`, {
      lastDay: life.lastDay,
      laterRecordedUseBy: misread === '' ? null : thing.useByLastDay,
    });
  }
  if (life.status === 'open too long') {
    const whose = {
      label: "the label's opened life",
      assumed: "the studio's assumed opened life",
      'sending studio': 'the opened life as counted in the studio it came from',
      none: 'its opened life',
    }[life.openedLifeFrom];
    add(
      'open too long',
      `${describeThing(thing)} was opened too long ago: by ${whose} it was usable through ${life.lastDay}.`,
      {
        lastDay: life.lastDay,
        openedLifeFrom: life.openedLifeFrom,
      },
    );
  }
  if (thing.state === 'practice only') {
    add('practice only', `${describeThing(thing)} is kept for practice skin only.`);
  }
  if (facts.serialTaken) {
    add(
      'already used',
      `This very piece of ${thing.label} was scanned before: its serial number is used once only.`,
    );
  }
  if (hasEnded(thing.state)) {
    add('none left', `${describeThing(thing)} is recorded as ${thing.state}.`, { state: thing.state });
  } else if (availablePieces(thing) <= 0) {
    const elsewhere = thing.reservedPieces > 0 ? ` ${thing.reservedPieces} of it lie on trays.` : '';
    add('none left', `By the book none of ${describeThing(thing)} is left.${elsewhere}`, {
      pieces: thing.pieces,
      reservedPieces: thing.reservedPieces,
    });
  }
  return reasons.sort((a, b) => rank(refusalCodes, a) - rank(refusalCodes, b));
}

function warningsOf(facts: TrayFacts, life: ShelfLife, at: string, timeZone: string): Reason[] {
  const { thing } = facts;
  const reasons: Reason[] = [];
  const add = (code: WarningCode, message: string, more: ReasonFacts = {}) =>
    reasons.push({ code, message, facts: { label: thing.label, lotCode: thing.lotCode, ...more } });

  if (life.status === 'no date known') add('no date known', `${thing.label}: ${life.sentence.next}`);
  if (facts.symbolUseBy !== null && thing.useByLastDay !== null && facts.symbolUseBy !== thing.useByLastDay) {
    add(
      'date differs from the record',
      facts.symbolIsOwnLabel
        ? `The label says use-by ${facts.symbolUseBy}, the record ${thing.useByLastDay}, which counts: it was corrected after the label was printed. Print the label anew.`
        : `The symbol says use-by ${facts.symbolUseBy}, the record ${thing.useByLastDay}; the earlier is taken. Have the record corrected.`,
      {
        symbolUseBy: facts.symbolUseBy,
        recordedUseBy: thing.useByLastDay,
        counted: facts.symbolIsOwnLabel ? 'record' : 'earlier',
      },
    );
  }
  if (
    thing.isPigment &&
    facts.touchUpBy !== null &&
    life.lastDay !== null &&
    life.lastDay < facts.touchUpBy
  ) {
    add(
      'out of date before the touch-up',
      `${describeThing(thing)} is usable through ${life.lastDay}, but the touch-up may be as late as ${facts.touchUpBy}. A fresher lot can be used for both.`,
      { lastDay: life.lastDay, touchUpBy: facts.touchUpBy },
    );
  }
  const others = facts.others.map(asCandidate);
  const [earlier] = earlierExpiring(others, asCandidate(thing), at, timeZone);
  if (earlier) {
    const { lastDay } = judgeShelfLife(earlier.thing, at, timeZone);
    add(
      'an earlier-expiring one is here',
      `${describeThing(earlier.thing)} ends first (${lastDay}). Take that one unless there is a reason.`,
      { containerId: earlier.thing.containerId, lastDay, ...otherOf(earlier.thing) },
    );
  }
  if (thing.stockForm === 'container' && thing.state === 'sealed') {
    const open = orderFirstExpired(others, at, timeZone).order.find(
      ({ thing: other }) => other.state === 'opened',
    );
    if (open) {
      add('another bottle is open', `${describeThing(open.thing)} is open already. Finish it first.`, {
        containerId: open.thing.containerId,
        ...otherOf(open.thing),
      });
    }
  }
  if (thing.ownerId !== null && thing.ownerId !== facts.artistId) {
    add("another artist's", `${describeThing(thing)} belongs to another artist. Ask before using it.`, {
      ownerId: thing.ownerId,
    });
  }
  if (facts.onKitList === 'no')
    add('not on the kit list', `${thing.label} is not on the kit list of this procedure.`);
  return reasons.sort((a, b) => rank(warningCodes, a) - rank(warningCodes, b));
}

function askAnother(facts: TrayFacts): Reason {
  const { thing, linesOnTray } = facts;
  return {
    code: 'another one?',
    message: `${describeThing(thing)} lies on this tray already (${linesOnTray}). Is this another piece? Its symbol has no serial number that would tell.`,
    facts: { label: thing.label, lotCode: thing.lotCode, linesOnTray },
  };
}

/** Of several things the one to take first; null when none may be used. */
export function firstUsable(things: readonly TrayThing[], at: string, timeZone: string): TrayThing | null {
  return orderFirstExpired(things.map(asCandidate), at, timeZone).order[0]?.thing ?? null;
}

function insteadOf(instead: TrayThing | null): ReasonFacts {
  return { insteadLabel: instead?.label ?? null, insteadLotCode: instead?.lotCode ?? null };
}

/** The other container that a warning is about. */
function otherOf(other: TrayThing): ReasonFacts {
  return { otherLabel: other.label, otherLotCode: other.lotCode };
}

function onWhat(hold: HoldFact): string {
  return hold.on === 'parent lot' ? ' because a lot that was blended into it is' : '';
}

function rank(codes: readonly string[], reason: Reason): number {
  return codes.indexOf(reason.code);
}
