import { Injectable } from '@nestjs/common';
import { readSymbol, type SymbolReading } from '../catalogue/barcode.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { notFound, Problem } from '../platform/problem.js';
import { ConfigurationPools } from '../stock/configuration-pools.service.js';
import type { ContainerFact } from '../stock/container-facts.service.js';
import { localDay } from '../stock/local-day.js';
import { judgeShelfLife } from '../stock/shelf-life.js';
import { meantContainer } from './meant-container.js';
import { Scan } from './scan.entity.js';
import { touchUpWindow } from './touch-up-window.js';
import type { ScanDto, TakeOffDto } from './tray.dto.js';
import type { ScanView, TrayThingView } from './tray.views.js';
import { TrayLine } from './tray-line.entity.js';
import {
  type LineOnTray,
  type Named,
  TrayLookUp,
  type TraySession,
  trayThing,
} from './tray-look-up.service.js';
import { admit, noneLeft, type Reason, type TrayDecision } from './tray-rules.js';
import { asCandidate, availablePieces, type TrayThing } from './tray-thing.js';
import { UnmetDemand } from './unmet-demand.entity.js';
import type { KnownBy, Verdict } from './vocabulary.js';

/** Visits after which a touch-up with the same mix is expected. */
const visitsWithTouchUp: ReadonlySet<string> = new Set(['first session', 'correction']);

/** What the scan was judged on: everything loaded in the transaction. */
interface Loaded {
  session: TraySession;
  named: Named;
  things: TrayThing[];
  lines: LineOnTray[];
  reading: SymbolReading | null;
}

/** What is written and shown of a scan. */
interface Outcome {
  verdict: Verdict;
  reasons: Reason[];
  thing: TrayThing | null;
  decision: TrayDecision | null;
  choices: TrayThing[];
  /** The product of which nothing was left. */
  unmetProductId: string | null;
}

/**
 * The setup tray. Guarantees: every scan that names something known is recorded with its verdict, refusals too; a piece
 * on a tray is reserved, so that of two artists who take the last one at once one gets it and one is told; the same scan
 * id is one piece, whatever is repeated.
 */
@Injectable()
export class SetupTray {
  constructor(
    private readonly transactions: Transactions,
    private readonly lookUp: TrayLookUp,
    private readonly pools: ConfigurationPools,
  ) {}

  async scan(actor: Actor, sessionId: string, dto: ScanDto): Promise<ScanView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.scan',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, ...dto },
      },
      async (transaction) => {
        const at = occurredAt(dto.occurredAt, transaction.recordedAt);
        const loaded = await this.load(transaction, actor, sessionId, dto, at);
        const outcome = await this.decide(transaction, actor, loaded, dto, at);
        return this.write(transaction, loaded, outcome, dto, at);
      },
    );
  }

  /** Takes a line off the tray again, unopened: its piece is free for others. */
  async takeOff(actor: Actor, sessionId: string, lineId: string, dto: TakeOffDto): Promise<{ id: string }> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.take-off-tray',
        subject: { kind: 'session', id: sessionId },
        content: { sessionId, lineId, ...dto },
      },
      async (transaction) => {
        await transaction.lock('session', [sessionId]);
        const { state } = await this.lookUp.session(transaction.read, actor.studioId, sessionId);
        requireSetup(state);
        const [mixed] = await transaction.query<{ microlitres: number | null }>(
          `SELECT sum(mix_component.microlitres) AS microlitres FROM mix_component JOIN tray_line
             ON tray_line.studio_id = mix_component.studio_id AND tray_line.session_id = mix_component.session_id
               AND tray_line.container_id = mix_component.container_id
           WHERE tray_line.studio_id = $1 AND tray_line.session_id = $2 AND tray_line.id = $3`,
          [actor.studioId, sessionId, lineId],
        );
        if ((mixed?.microlitres ?? 0) !== 0) {
          throw new Problem(
            409,
            'wrong-state',
            'This bottle is in a mix of this session, so it stays on the tray. Take the drops back first, if they were never mixed.',
          );
        }
        const line = await transaction.update(
          TrayLine,
          { studioId: actor.studioId, sessionId, id: lineId, state: 'on tray' },
          { state: 'taken off' },
        );
        if (!line) throw notFound('line on this tray', lineId);
        return { id: line.id };
      },
    );
  }

  private async load(
    transaction: Transaction,
    actor: Actor,
    sessionId: string,
    dto: ScanDto,
    at: string,
  ): Promise<Loaded> {
    const reading =
      dto.symbol === undefined
        ? null
        : readSymbol(
            {
              text: dto.symbol,
              ...(dto.symbologyIdentifier === undefined
                ? {}
                : { symbologyIdentifier: dto.symbologyIdentifier }),
            },
            localDay(at, actor.timeZone),
          );
    await transaction.lock('session', [sessionId]);
    const session = await this.lookUp.session(transaction.read, actor.studioId, sessionId);
    requireSetup(session.state);
    const named = reading
      ? await this.lookUp.named(transaction.read, actor, reading)
      : await this.lookUp.picked(transaction.read, actor, dto);
    const chosen = reading ? chosenFrom(named, dto) : named;
    await transaction.lock('product', chosen.productIds);
    // A label names its container even when that one has ended; of a product only what is present is looked at.
    const facts = await this.lookUp.facts(transaction.read, actor.studioId, {
      productIds: chosen.productIds,
      ended: true,
    });
    const lines = await this.lookUp.linesOnTrays(
      transaction.read,
      actor.studioId,
      sessionId,
      chosen.productIds,
    );
    const things = facts
      .filter((fact) => isPresent(fact) || fact.containerId === chosen.containerId)
      .map((fact) => trayThing(fact, session.assumedOpenedLife, lines));
    return { session, named: chosen, things, lines, reading };
  }

  private async decide(
    transaction: Transaction,
    actor: Actor,
    loaded: Loaded,
    dto: ScanDto,
    at: string,
  ): Promise<Outcome> {
    const { session, named, things, lines, reading } = loaded;
    const open: Outcome = {
      verdict: 'question',
      reasons: [],
      thing: null,
      decision: null,
      choices: [],
      unmetProductId: null,
    };
    const meant = this.meant(loaded, actor, at);
    if (meant.ask) return { ...open, reasons: [meant.ask.reason], choices: meant.ask.choices };
    const { thing } = meant;
    if (!thing) {
      const [productId = ''] = named.productIds;
      const label = await this.lookUp.productLabel(transaction.read, actor.chainId, productId);
      return { ...open, verdict: 'refused', reasons: [noneLeft(label)], unmetProductId: productId };
    }
    const serial = serialOf(reading);
    const decision = admit(
      {
        thing,
        others: things.filter(
          (other) => other.productId === thing.productId && other.containerId !== thing.containerId,
        ),
        symbolUseBy: useByOf(reading),
        serialTaken:
          serial !== null &&
          thing.stockForm === 'pieces' &&
          (await this.lookUp.serialTaken(transaction.read, actor.studioId, thing.productId, serial)),
        linesOnTray: lines.filter(
          (line) => line.sessionId === session.id && line.containerId === thing.containerId,
        ).length,
        another: dto.another === true,
        hasSerial: serial !== null,
        onKitList: await this.onKitList(transaction, actor, session, thing.productId),
        artistId: session.artistId,
        touchUpBy: visitsWithTouchUp.has(session.visitKind)
          ? touchUpWindow(localDay(at, actor.timeZone), {
              fromDays: session.touchUpFromDays,
              toDays: session.touchUpToDays,
            }).closesOn
          : null,
      },
      at,
      actor.timeZone,
    );
    const nothingLeft = decision.reasons.some((reason) => reason.code === 'none left') && !decision.instead;
    return {
      ...open,
      verdict: decision.verdict,
      reasons: decision.reasons,
      thing,
      decision,
      unmetProductId: nothingLeft ? thing.productId : null,
    };
  }

  /** Which container a scan means, or the question that a person must answer. */
  private meant(
    { named, things }: Loaded,
    actor: Actor,
    at: string,
  ): { thing: TrayThing | null; ask?: { reason: Reason; choices: TrayThing[] } } {
    if (named.containerId !== null) {
      const thing = things.find(
        ({ containerId, lotId }) =>
          containerId === named.containerId && (named.lotIds === null || named.lotIds.includes(lotId)),
      );
      if (!thing) throw notFound('container of what was scanned', named.containerId);
      return { thing };
    }
    if (named.lotIds === null) {
      const usable = things.filter((thing) => isUsable(thing, at, actor.timeZone));
      if (usable.length === 0) return { thing: null };
      return { thing: null, ask: { reason: askLot(usable), choices: usable } };
    }
    const lotIds = named.lotIds;
    const ofLots = things.filter((thing) => lotIds.includes(thing.lotId));
    if (new Set(ofLots.map((thing) => thing.productId)).size > 1) {
      return { thing: null, ask: { reason: askLot(ofLots), choices: ofLots } };
    }
    const meant = meantContainer(ofLots, at, actor.timeZone);
    if (meant.kind === 'ask') {
      return { thing: null, ask: { reason: askContainer(meant.things), choices: meant.things } };
    }
    return { thing: meant.kind === 'this' ? meant.thing : null };
  }

  private async onKitList(
    transaction: Transaction,
    actor: Actor,
    session: TraySession,
    productId: string,
  ): Promise<'yes' | 'no' | 'there is no kit list'> {
    const { kitItems } = session;
    if (kitItems === null) return 'there is no kit list';
    if (kitItems.some((item) => item.productId === productId)) return 'yes';
    const configurations = new Set(kitItems.map((item) => item.configuration));
    configurations.delete(null);
    if (configurations.size === 0) return 'no';
    const pools = await this.pools.load(transaction.read, actor.chainId);
    const pool = pools.find(({ productIds }) => productIds.includes(productId));
    return pool?.poolKeys.some((key) => configurations.has(key)) ? 'yes' : 'no';
  }

  private async write(
    transaction: Transaction,
    { session, named, reading }: Loaded,
    outcome: Outcome,
    dto: ScanDto,
    at: string,
  ): Promise<ScanView> {
    const { studioId, personId, via, timeZone } = transaction.actor;
    const { thing, decision } = outcome;
    const knownBy = knownByOf(reading);
    const scan: Scan = {
      studioId,
      id: dto.id,
      sessionId: session.id,
      symbol: dto.symbol ?? null,
      knownBy,
      verdict: outcome.verdict,
      reasons: outcome.reasons,
      productId: thing?.productId ?? (named.productIds.length === 1 ? (named.productIds[0] ?? null) : null),
      lotId: thing?.lotId ?? null,
      containerId: thing?.containerId ?? null,
      serial: serialOf(reading),
      occurredAt: at,
      recordedAt: transaction.recordedAt,
      personId,
      via,
    };
    await transaction.insert(Scan, scan);
    const admitted = outcome.verdict === 'admitted' || outcome.verdict === 'warned';
    if (admitted && thing && decision?.addsLine) {
      await transaction.insert(TrayLine, {
        studioId,
        id: dto.id,
        sessionId: session.id,
        productId: thing.productId,
        lotId: thing.lotId,
        containerId: thing.containerId,
        pieces: decision.piecesAdded,
        serial: thing.stockForm === 'pieces' ? scan.serial : null,
        knownBy,
        admittedAt: at,
        state: 'on tray',
        settledAs: null,
      });
    }
    if (outcome.unmetProductId !== null) {
      await transaction.insert(UnmetDemand, {
        studioId,
        id: dto.id,
        sessionId: session.id,
        productId: outcome.unmetProductId,
        occurredAt: at,
        recordedAt: transaction.recordedAt,
      });
    }
    return {
      id: dto.id,
      sessionId: session.id,
      verdict: outcome.verdict,
      reasons: outcome.reasons.map(({ code, message }) => ({ code, message })),
      knownBy,
      thing: thing ? thingView(thing, at, timeZone) : null,
      instead: decision?.instead ? thingView(decision.instead, at, timeZone) : null,
      choices: outcome.choices.map((choice) => thingView(choice, at, timeZone)),
      offers: decision?.offers ?? [],
      trayLineId: admitted && decision?.addsLine ? dto.id : null,
      occurredAt: at,
    };
  }
}

export function requireSetup(state: string): void {
  if (state === 'in setup') return;
  const next =
    state === 'planned'
      ? 'Start its setup first.'
      : state === 'completed'
        ? 'What was used besides is added to the completed session by an amendment.'
        : 'Plan a new session.';
  throw new Problem(409, 'wrong-state', `The session is ${state}; its tray is open only in setup. ${next}`, {
    state,
  });
}

/** A question about a symbol is answered with the container or lot that is meant, which must be one it names. */
function chosenFrom(named: Named, dto: ScanDto): Named {
  if (dto.containerId !== undefined) return { ...named, containerId: dto.containerId };
  if (dto.lotId !== undefined && (named.lotIds === null || named.lotIds.includes(dto.lotId))) {
    return { ...named, lotIds: [dto.lotId] };
  }
  return named;
}

function isPresent(fact: ContainerFact): boolean {
  return fact.state !== 'finished' && fact.state !== 'discarded';
}

function isUsable(thing: TrayThing, at: string, timeZone: string): boolean {
  const { held, practice, finished } = asCandidate(thing);
  const { status } = judgeShelfLife(thing, at, timeZone);
  return !held && !practice && !finished && status !== 'expired' && status !== 'open too long';
}

function askLot(things: readonly TrayThing[]): Reason {
  return {
    code: 'which lot?',
    message: 'This names a product but not one lot. Pick the lot that is printed on what is in hand.',
    facts: { choices: things.length },
  };
}

function askContainer(things: readonly TrayThing[]): Reason {
  return {
    code: 'which container?',
    message: `${things.length} bottles of this lot are open. Scan the label of the one in hand, or pick it.`,
    facts: { choices: things.length },
  };
}

function serialOf(reading: SymbolReading | null): string | null {
  return reading && 'serial' in reading ? (reading.serial ?? null) : null;
}

function useByOf(reading: SymbolReading | null): string | null {
  return reading && 'useBy' in reading ? (reading.useBy?.date ?? null) : null;
}

function knownByOf(reading: SymbolReading | null): KnownBy {
  switch (reading?.kind) {
    case undefined:
      return 'picked from a list';
    case 'own label':
      return 'own label';
    case 'plain text':
      return 'typed';
    case 'product only':
      // The symbol told the product only; the lot was picked.
      return 'picked from a list';
    default:
      return "maker's symbol";
  }
}

export function thingView(thing: TrayThing, at: string, timeZone: string): TrayThingView {
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
