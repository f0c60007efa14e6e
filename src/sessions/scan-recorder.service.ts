import { Injectable } from '@nestjs/common';
import type { Transaction } from '../platform/database/transaction.js';
import { Scan } from './scan.entity.js';
import type { ScanOutcome } from './scan-judgement.js';
import { shownThing } from './shown-thing.js';
import type { ScanView } from './tray.views.js';
import { TrayLine } from './tray-line.entity.js';
import { UnmetDemand } from './unmet-demand.entity.js';
import type { KnownBy } from './vocabulary.js';

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
      reasons: outcome.reasons,
      knownBy,
      thing: thing ? shownThing(thing, occurredAt, timeZone) : null,
      instead: outcome.instead ? shownThing(outcome.instead, occurredAt, timeZone) : null,
      choices: outcome.choices.map((choice) => shownThing(choice, occurredAt, timeZone)),
      offers: decision?.offers ?? [],
      trayLineId: admitted && decision?.addsLine ? id : null,
      occurredAt,
    };
  }
}
