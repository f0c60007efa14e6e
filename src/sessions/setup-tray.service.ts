import { Injectable } from '@nestjs/common';
import { readSymbol, type SymbolReading } from '../catalogue/barcode.js';
import { ConfigurationPools } from '../catalogue/configuration-pools.service.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { invalidField, type Problem } from '../platform/problem.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import { meantContainer, type Named, narrowed, type Pick } from './meant-container.js';
import { type OnKitList, onKitList } from './on-kit-list.js';
import { type ScanOutcome, ScanRecorder } from './scan-recorder.service.js';
import { SessionLock } from './session-lock.service.js';
import { knownByOf, pieceSerialOf, serialOf, useByOf } from './symbol-facts.js';
import type { ScanDto } from './tray.dto.js';
import type { ScanView } from './tray.views.js';
import { trayFacts } from './tray-facts.js';
import { type LineOnTray, TrayLookUp } from './tray-look-up.service.js';
import { admit, firstUsable, noneLeft, type TrayDecision } from './tray-rules.js';
import type { TraySession } from './tray-sessions.service.js';
import { type TrayThing, trayThing } from './tray-thing.js';

/** What the scan was judged on: everything loaded in the transaction. */
interface Loaded {
  session: TraySession;
  named: Named;
  things: TrayThing[];
  lines: LineOnTray[];
  reading: SymbolReading | null;
  /** Serial number of a single piece. */
  pieceSerial: string | null;
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
    private readonly lock: SessionLock,
    private readonly lookUp: TrayLookUp,
    private readonly containerFacts: ContainerFacts,
    private readonly register: ProductRegister,
    private readonly pools: ConfigurationPools,
    private readonly recorder: ScanRecorder,
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
        const { session, named, reading, pieceSerial } = loaded;
        return this.recorder.record(transaction, {
          id: dto.id,
          sessionId: session.id,
          symbol: dto.symbol ?? null,
          knownBy: knownByOf(reading),
          serial: serialOf(reading),
          pieceSerial,
          productIds: named.productIds,
          occurredAt: at,
          outcome,
        });
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
    const read =
      dto.symbol === undefined
        ? null
        : readSymbol(
            {
              text: dto.symbol,
              symbologyIdentifier: dto.symbologyIdentifier,
            },
            localDay(at, actor.timeZone),
          );
    const session = await this.lock.forStep(transaction, sessionId, 'use tray');
    const reading = read && (await this.lookUp.recognised(transaction.read, actor.studioId, read));
    const named = reading
      ? await this.lookUp.named(transaction.read, actor, reading)
      : { ...(await this.lookUp.picked(transaction.read, actor, dto)), contentCount: null };
    const chosen = await this.narrowed(transaction, actor, named, dto);
    await transaction.lock('product', chosen.productIds);
    const facts = await this.factsOf(transaction, actor, chosen);
    const lines = await this.lookUp.linesOnTrays(
      transaction.read,
      actor.studioId,
      sessionId,
      chosen.productIds,
    );
    const things = facts.map((fact) => trayThing(fact, session.assumedOpenedLife, lines));
    const pieceSerial = pieceSerialOf(reading, named.contentCount);
    return { session, named: chosen, things, lines, reading, pieceSerial };
  }

  /**
   * What a symbol or a pick names, narrowed by all that was picked.
   * @throws Problem invalid-fields naming the pick that contradicts it
   */
  private async narrowed(transaction: Transaction, actor: Actor, named: Named, dto: ScanDto): Promise<Named> {
    const chosen = narrowed(named, dto);
    if ('contradicts' in chosen) throw contradicts(chosen.contradicts);
    const { lotId } = dto;
    if (lotId === undefined) return chosen;
    const isOf = await this.lookUp.isLotOf(transaction.read, actor.studioId, lotId, chosen.productIds);
    if (!isOf) throw contradicts('lotId');
    return chosen;
  }

  /** Of a product what is present; a label names its container even when that one has ended. */
  private async factsOf(transaction: Transaction, actor: Actor, named: Named): Promise<ContainerFact[]> {
    const { productIds, containerId } = named;
    const present = await this.containerFacts.load(transaction.read, actor.studioId, { productIds });
    if (containerId === null || present.some((fact) => fact.containerId === containerId)) return present;
    const ended = await this.containerFacts.load(transaction.read, actor.studioId, {
      containerIds: [containerId],
      ended: true,
    });
    return [...present, ...ended.filter((fact) => productIds.includes(fact.productId))];
  }

  private async decide(
    transaction: Transaction,
    actor: Actor,
    loaded: Loaded,
    dto: ScanDto,
    at: string,
  ): Promise<ScanOutcome> {
    const { session, named, things, lines, reading, pieceSerial: serial } = loaded;
    const open: ScanOutcome = {
      verdict: 'question',
      reasons: [],
      thing: null,
      decision: null,
      instead: null,
      choices: [],
      unmetProductId: null,
    };
    const meant = meantContainer(named, things, at, actor.timeZone);
    if (meant.kind === 'ask') return { ...open, reasons: [meant.reason], choices: meant.choices };
    if (meant.kind === 'another container') {
      throw contradicts('containerId');
    }
    if (meant.kind === 'none') {
      const [productId = ''] = named.productIds;
      const labels = await this.register.labels(transaction.read, actor.chainId, [productId]);
      const label = labels.get(productId) ?? 'this product';
      const standIns = await this.standIns(transaction, actor, session, productId);
      const instead = firstUsable(standIns, at, actor.timeZone);
      const unmetProductId = instead ? null : productId;
      return { ...open, verdict: 'refused', reasons: [noneLeft(label, instead)], instead, unmetProductId };
    }
    const { thing } = meant;
    const { touchUpFromDays: fromDays, touchUpToDays: toDays, id, artistId, visitKind } = session;
    const scanned = trayFacts({
      thing,
      things,
      lines,
      containerNamed: named.containerId !== null,
      session: { id, artistId, visitKind, touchUpDays: { fromDays, toDays } },
      symbolUseBy: useByOf(reading),
      symbolIsOwnLabel: reading?.kind === 'own label',
      serial,
      serialKnown:
        serial !== null &&
        (await this.lookUp.serialKnown(transaction.read, actor.studioId, thing.productId, serial)),
      another: dto.another === true,
      onKitList: await this.onKitList(transaction, actor, session, thing.productId),
      day: localDay(at, actor.timeZone),
    });
    let decision = admit(scanned, at, actor.timeZone);
    if (needsStandIn(decision)) {
      const others = await this.standIns(transaction, actor, session, thing.productId);
      if (firstUsable(others, at, actor.timeZone))
        decision = admit({ ...scanned, others }, at, actor.timeZone);
    }
    const nothingLeft = decision.reasons.some((reason) => reason.code === 'none left') && !decision.instead;
    return {
      ...open,
      verdict: decision.verdict,
      reasons: decision.reasons,
      thing,
      decision,
      instead: decision.instead,
      unmetProductId: nothingLeft ? thing.productId : null,
    };
  }

  /** What is here of the products that stand for one by their configuration; looked for only where it is needed. */
  private async standIns(
    transaction: Transaction,
    actor: Actor,
    session: TraySession,
    productId: string,
  ): Promise<TrayThing[]> {
    const { read, studioId } = transaction;
    const pools = await this.pools.load(read, actor.chainId);
    const pool = pools.find(({ productIds }) => productIds.includes(productId));
    const productIds = (pool?.productIds ?? []).filter((id) => id !== productId);
    if (productIds.length === 0) return [];
    const facts = await this.containerFacts.load(read, studioId, { productIds });
    const lines = await this.lookUp.linesOnTrays(read, studioId, session.id, productIds);
    return facts.map((fact) => trayThing(fact, session.assumedOpenedLife, lines));
  }

  private async onKitList(
    transaction: Transaction,
    actor: Actor,
    session: TraySession,
    productId: string,
  ): Promise<OnKitList> {
    const { kitItems } = session;
    const named = onKitList(kitItems, productId, []);
    if (named !== 'no' || !kitItems?.some((item) => item.configuration !== null)) return named;
    const pools = await this.pools.load(transaction.read, actor.chainId);
    const pool = pools.find(({ productIds }) => productIds.includes(productId));
    return onKitList(kitItems, productId, pool?.poolKeys ?? []);
  }
}

/** Refused, and nothing of the same product may be used instead; a piece that was used says nothing of the others. */
function needsStandIn({ verdict, reasons, instead }: TrayDecision): boolean {
  return verdict === 'refused' && !instead && reasons.some((reason) => reason.code !== 'already used');
}

function contradicts(field: keyof Pick): Problem {
  const what = { containerId: 'container', lotId: 'lot', productId: 'product' }[field];
  return invalidField(
    field,
    `The ${what} that was picked is another than what was scanned or picked besides. Pick one of those the answer offers, or leave ${field} out.`,
  );
}
