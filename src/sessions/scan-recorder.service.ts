import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { judgeShelfLife } from '../stock/shelf-life.js';
import { Scan } from './scan.entity.js';
import type { ScanView, TrayThingView } from './tray.views.js';
import { TrayLine } from './tray-line.entity.js';
import type { Reason, TrayDecision } from './tray-rules.js';
import { availablePieces, type TrayThing } from './tray-thing.js';
import { UnmetDemand } from './unmet-demand.entity.js';
import type { KnownBy, Verdict } from './vocabulary.js';

/** What a scan was answered. */
export interface ScanOutcome {
  verdict: Verdict;
  reasons: Reason[];
  thing: TrayThing | null;
  decision: TrayDecision | null;
  /** What to take instead, or first. */
  instead: TrayThing | null;
  choices: TrayThing[];
  /** The product of which nothing was left. */
  unmetProductId: string | null;
}

/** A scan that was judged, to be written and shown. */
export interface JudgedScan {
  id: string;
  sessionId: string;
  /** The text of the symbol as read; null when the lot was picked from a list. */
  symbol: string | null;
  knownBy: KnownBy;
  serial: string | null;
  /** Serial number of a single piece. */
  pieceSerial: string | null;
  /** The products that were named. */
  productIds: readonly string[];
  occurredAt: string;
  outcome: ScanOutcome;
}

/** Writes a scan with its verdict, the line it put on the tray or the demand it could not meet, and shows it. */
@Injectable()
export class ScanRecorder {
  async record(transaction: Transaction, judged: JudgedScan): Promise<ScanView> {
    const { studioId, personId, via, timeZone } = transaction.actor;
    const { id, sessionId, productIds, knownBy, serial, occurredAt, outcome } = judged;
    const { thing, decision } = outcome;
    const [onlyProductId = null] = productIds.length === 1 ? productIds : [];
    const scan: Scan = {
      studioId,
      id,
      sessionId,
      symbol: judged.symbol,
      knownBy,
      verdict: outcome.verdict,
      reasons: outcome.reasons,
      productId: thing?.productId ?? onlyProductId,
      lotId: thing?.lotId ?? null,
      containerId: thing?.containerId ?? null,
      serial,
      occurredAt,
      recordedAt: transaction.recordedAt,
      personId,
      via,
    };
    await transaction.insert(Scan, scan);
    const admitted = outcome.verdict === 'admitted' || outcome.verdict === 'warned';
    if (admitted && thing && decision?.addsLine) {
      await transaction.insert(TrayLine, {
        studioId,
        id,
        sessionId,
        productId: thing.productId,
        lotId: thing.lotId,
        containerId: thing.containerId,
        pieces: decision.piecesAdded,
        serial: thing.stockForm === 'pieces' ? judged.pieceSerial : null,
        knownBy,
        admittedAt: occurredAt,
        state: 'on tray',
        settledAs: null,
        settledAt: null,
      });
    }
    if (outcome.unmetProductId !== null) {
      await transaction.insert(UnmetDemand, {
        studioId,
        id,
        sessionId,
        productId: outcome.unmetProductId,
        occurredAt,
        recordedAt: transaction.recordedAt,
      });
    }
    return {
      id,
      sessionId,
      verdict: outcome.verdict,
      reasons: outcome.reasons.map(({ code, message }) => ({ code, message })),
      knownBy,
      thing: thing ? thingView(thing, occurredAt, timeZone) : null,
      instead: outcome.instead ? thingView(outcome.instead, occurredAt, timeZone) : null,
      choices: outcome.choices.map((choice) => thingView(choice, occurredAt, timeZone)),
      offers: decision?.offers ?? [],
      trayLineId: admitted && decision?.addsLine ? id : null,
      occurredAt,
    };
  }
}

function thingView(thing: TrayThing, at: string, timeZone: string): TrayThingView {
  const life = judgeShelfLife(thing, at, timeZone);
  return {
    containerId: thing.containerId,
    lotId: thing.lotId,
    productId: thing.productId,
    label: thing.label,
    labelCode: thing.labelCode,
    lotCode: thing.lotCode,
    state: thing.state,
    lastDay: life.lastDay,
    openedLifeFrom: life.openedLifeFrom,
    availablePieces: availablePieces(thing),
  };
}
