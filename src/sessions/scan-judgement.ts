import type { SymbolReading } from '../catalogue/barcode.js';
import { localDay } from '../identity/local-day.js';
import { meantContainer, type Named } from './meant-container.js';
import { onKitList } from './on-kit-list.js';
import { useByOf } from './symbol-facts.js';
import { trayFacts } from './tray-facts.js';
import { admit, firstUsable, noneLeft, type Reason, type TrayDecision } from './tray-rules.js';
import type { TrayThing } from './tray-thing.js';
import type { Verdict, VisitKind } from './vocabulary.js';

/** The session of a tray, as far as its scans are judged by it. */
export interface JudgedSession {
  id: string;
  artistId: string;
  visitKind: VisitKind;
  touchUpFromDays: number;
  touchUpToDays: number;
  /** The lines of its kit list; null: it has none. */
  kitItems: readonly { productId: string | null; configuration: string | null }[] | null;
}

/** All that one scan is judged on. */
export interface ScanFacts {
  session: JudgedSession;
  /** What the symbol and the picks name, narrowed. */
  named: Named;
  /** The containers of the products named. */
  things: readonly TrayThing[];
  /** Lines on any tray, of the products named. */
  lines: readonly { sessionId: string; containerId: string; lotId: string }[];
  /** Null when nothing was scanned but picked. */
  reading: SymbolReading | null;
  /** Serial number of a single piece; null when the symbol bears none. */
  pieceSerial: string | null;
  /** Of the products named, those of which a piece of this serial lies on a tray or was used. */
  productsWithSerial: readonly string[];
  /** What the artist answered to "another one?". */
  another: boolean;
  /** Keys of the configuration pool of a product; empty when it stands in none. */
  poolKeysOf: (productId: string) => readonly string[];
  /** What is here of the products that stand for the first one named; asked for when nothing of its own may be used. */
  standIns: readonly TrayThing[];
  /** How a person calls the first product named. */
  productLabel: string;
}

/** What a scan is answered. */
export interface ScanOutcome {
  verdict: Verdict;
  reasons: Reason[];
  thing: TrayThing | null;
  decision: TrayDecision | null;
  /** What to take instead, or first. */
  instead: TrayThing | null;
  choices: readonly TrayThing[];
  /** The product of which nothing was left. */
  unmetProductId: string | null;
}

export type ScanJudgement =
  | { kind: 'judged'; outcome: ScanOutcome }
  /** A container was picked that is none of those named. */
  | { kind: 'another container' };

/**
 * Judges one scan on all that is known: which container is meant, and whether it is admitted. The service judges by the
 * record, a device without network by what it last knew of it.
 *
 * @param at ISO 8601 instant of the scan, by the device
 * @param timeZone IANA time zone of the studio
 */
export function judgeScan(facts: ScanFacts, at: string, timeZone: string): ScanJudgement {
  const { session, named, things, standIns } = facts;
  const open: ScanOutcome = {
    verdict: 'question',
    reasons: [],
    thing: null,
    decision: null,
    instead: null,
    choices: [],
    unmetProductId: null,
  };
  const judged = (outcome: Partial<ScanOutcome>): ScanJudgement => ({
    kind: 'judged',
    outcome: { ...open, ...outcome },
  });

  const meant = meantContainer(named, things, at, timeZone);
  if (meant.kind === 'another container') return meant;
  if (meant.kind === 'ask') return judged({ reasons: [meant.reason], choices: meant.choices });
  if (meant.kind === 'none') {
    const [productId = ''] = named.productIds;
    const instead = firstUsable(standIns, at, timeZone);
    return judged({
      verdict: 'refused',
      reasons: [noneLeft(facts.productLabel, instead)],
      instead,
      unmetProductId: instead ? null : productId,
    });
  }

  const { thing } = meant;
  const scanned = trayFacts({
    thing,
    things,
    lines: facts.lines,
    containerNamed: named.containerId !== null,
    session: {
      id: session.id,
      artistId: session.artistId,
      visitKind: session.visitKind,
      touchUpDays: { fromDays: session.touchUpFromDays, toDays: session.touchUpToDays },
    },
    symbolUseBy: useByOf(facts.reading),
    symbolIsOwnLabel: facts.reading?.kind === 'own label',
    serial: facts.pieceSerial,
    serialKnown: facts.pieceSerial !== null && facts.productsWithSerial.includes(thing.productId),
    another: facts.another,
    onKitList: onKitList(session.kitItems, thing.productId, facts.poolKeysOf(thing.productId)),
    day: localDay(at, timeZone),
  });
  const own = admit(scanned, at, timeZone);
  const decision =
    wantsStandIns(own) && firstUsable(standIns, at, timeZone)
      ? admit({ ...scanned, others: standIns }, at, timeZone)
      : own;
  const nothingLeft = decision.reasons.some((reason) => reason.code === 'none left') && !decision.instead;
  return judged({
    verdict: decision.verdict,
    reasons: decision.reasons,
    thing,
    decision,
    instead: decision.instead,
    unmetProductId: nothingLeft ? thing.productId : null,
  });
}

/**
 * Whether what stands for the product should be looked for: refused, and nothing of the same product may be used instead.
 * A piece that was used says nothing of the others.
 */
export function wantsStandIns({
  verdict,
  reasons,
  instead,
}: Pick<ScanOutcome, 'verdict' | 'reasons' | 'instead'>): boolean {
  return verdict === 'refused' && !instead && reasons.some((reason) => reason.code !== 'already used');
}
