import { readSymbol } from '../catalogue/barcode.js';
import { localDay } from '../identity/local-day.js';
import { hasEnded } from '../stock/container-transitions.js';
import { type Named, narrowed, type Pick } from './meant-container.js';
import { type JudgedSession, judgeScan, type ScanOutcome } from './scan-judgement.js';
import { knownByOf, pieceSerialOf } from './symbol-facts.js';
import { type FoundGoods, namedBy } from './symbol-naming.js';
import { type RecordedContainer, trayThing } from './tray-thing.js';
import type { KnownBy, SessionState } from './vocabulary.js';

/** A session of the day as a device knows it: the client by reference only. */
export interface DaySession extends JudgedSession {
  kitItems:
    | readonly { productId: string | null; configuration: string | null; quantity: number; label: string }[]
    | null;
  state: SessionState;
  clientReference: string;
  procedureName: string;
  /** ISO 8601 instant; null for none. */
  plannedStart: string | null;
}

/** A line that lies on some tray. */
export interface DayLine {
  id: string;
  sessionId: string;
  containerId: string;
  lotId: string;
  productId: string;
  pieces: number;
  serial: string | null;
  knownBy: KnownBy;
  /** ISO 8601 instant. */
  admittedAt: string;
}

/** What a device is told of a day, so that scans can be judged on it without network. */
export interface DayFacts extends FoundGoods {
  studioId: string;
  /** ISO 8601 instant of the service's clock: how old the facts are. */
  asOf: string;
  /** The studio's local day, YYYY-MM-DD. */
  day: string;
  /** IANA time zone of the studio. */
  timeZone: string;
  /** ISO 8601 duration; null: none is assumed. */
  assumedOpenedLife: string | null;
  sessions: readonly DaySession[];
  containers: readonly RecordedContainer[];
  lines: readonly DayLine[];
  /** Serial numbers of pieces that were used. */
  usedSerials: readonly { productId: string; serial: string }[];
  /** Products that stand for each other, with the keys of their configurations. */
  pools: readonly { productIds: readonly string[]; poolKeys: readonly string[] }[];
}

/** What was shown to a tray: a symbol, or what was picked. */
export interface ShownToTray extends Pick {
  symbol?: string;
  symbologyIdentifier?: string;
  another?: boolean;
}

export type DeviceJudgement =
  | { kind: 'judged'; knownBy: KnownBy; outcome: ScanOutcome; line: DayLine | null }
  /** The device does not know it, which says nothing of the record: the service judges it later. */
  | { kind: 'not known'; detail: string };

/**
 * Judges a scan on the facts of the day as the service would on the record.
 *
 * @param id of the scan, which the line it puts on the tray bears
 * @param at ISO 8601 instant of the scan
 */
export function judgeOnDevice(
  facts: DayFacts,
  sessionId: string,
  shown: ShownToTray,
  { id, at }: { id: string; at: string },
): DeviceJudgement {
  const { timeZone, lines, containers, pools } = facts;
  const session = facts.sessions.find((one) => one.id === sessionId);
  if (!session) return notKnown('This device knows nothing of this session.');
  const taken = taking(facts, shown, localDay(at, timeZone));
  if (taken.kind === 'not known') return taken;
  const { named, reading, contentCount } = taken;
  const [productId = ''] = named.productIds;
  const pool = pools.find(({ productIds }) => productIds.includes(productId));
  const thingsOf = (productIds: readonly string[]) =>
    containers
      .filter(({ productId }) => productIds.includes(productId))
      // Of what is gone only what a label names.
      .filter(({ containerId, state }) => containerId === named.containerId || !hasEnded(state))
      .map((container) => trayThing(container, facts.assumedOpenedLife, lines));
  const things = thingsOf(named.productIds);
  const serial = pieceSerialOf(reading, contentCount);
  const judgement = judgeScan(
    {
      session,
      named,
      things,
      lines,
      reading,
      pieceSerial: serial,
      productsWithSerial: [...facts.usedSerials, ...lines]
        .filter((one) => serial !== null && one.serial === serial)
        .map((one) => one.productId),
      another: shown.another === true,
      poolKeysOf: (id) => pools.find(({ productIds }) => productIds.includes(id))?.poolKeys ?? [],
      standIns: thingsOf((pool?.productIds ?? []).filter((id) => id !== productId)),
      productLabel: things[0]?.label ?? 'this product',
    },
    at,
    timeZone,
  );
  if (judgement.kind === 'another container') return notKnown('What was picked is not what was scanned.');
  const { outcome } = judgement;
  const { thing, decision, verdict } = outcome;
  const isAdmitted = verdict === 'admitted' || verdict === 'warned';
  const knownBy = knownByOf(reading);
  const line: DayLine | null =
    isAdmitted && thing && decision?.addsLine
      ? {
          id,
          sessionId,
          containerId: thing.containerId,
          lotId: thing.lotId,
          productId: thing.productId,
          pieces: decision.piecesAdded,
          serial: thing.stockForm === 'pieces' ? serial : null,
          knownBy,
          admittedAt: at,
        }
      : null;
  return { kind: 'judged', knownBy, outcome, line };
}

type Taking =
  | {
      kind: 'taken';
      named: Named;
      reading: ReturnType<typeof readSymbol> | null;
      contentCount: number | null;
    }
  | { kind: 'not known'; detail: string };

function taking(facts: DayFacts, shown: ShownToTray, day: string): Taking {
  let taken: Taking;
  if (shown.symbol === undefined) {
    taken = picked(facts, shown);
  } else {
    const { symbol: text, symbologyIdentifier } = shown;
    const reading = readSymbol(
      { text, ...(symbologyIdentifier !== undefined && { symbologyIdentifier }) },
      day,
    );
    const naming = namedBy(reading, facts);
    if (naming.kind !== 'named') return notKnown(naming.detail);
    taken = { ...naming, kind: 'taken' };
  }
  if (taken.kind === 'not known') return taken;
  const chosen = narrowed(taken.named, shown);
  if ('contradicts' in chosen) return notKnown('What was picked is not what was scanned.');
  return { ...taken, named: chosen };
}

function picked({ containers }: DayFacts, pick: Pick): Taking {
  const container = containers.find(
    (one) =>
      (pick.containerId === undefined || one.containerId === pick.containerId) &&
      (pick.lotId === undefined || one.lotId === pick.lotId) &&
      (pick.productId === undefined || one.productId === pick.productId),
  );
  if (!container) return notKnown('This device knows nothing of what was picked.');
  const isLot = pick.containerId !== undefined || pick.lotId !== undefined;
  const named: Named = {
    productIds: [container.productId],
    lotIds: isLot ? [container.lotId] : null,
    containerId: pick.containerId ?? null,
  };
  return { kind: 'taken', named, reading: null, contentCount: null };
}

function notKnown(detail: string): { kind: 'not known'; detail: string } {
  return { kind: 'not known', detail };
}
