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
import { type Named, narrowed, type Pick } from './meant-container.js';
import { onKitList } from './on-kit-list.js';
import {
  judgeScan,
  type ScanFacts,
  type ScanJudgement,
  type ScanOutcome,
  wantsStandIns,
} from './scan-judgement.js';
import { ScanRecorder } from './scan-recorder.service.js';
import { SessionLock } from './session-lock.service.js';
import { knownByOf, pieceSerialOf, serialOf } from './symbol-facts.js';
import type { ScanDto } from './tray.dto.js';
import type { ScanView } from './tray.views.js';
import { type LineOnTray, TrayLookUp } from './tray-look-up.service.js';
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
    const { reading, named, contentCount } = read
      ? await this.lookUp.named(transaction.read, actor, read)
      : {
          reading: null,
          named: await this.lookUp.picked(transaction.read, actor, dto),
          contentCount: null,
        };
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
    const pieceSerial = pieceSerialOf(reading, contentCount);
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
    const { session, named, pieceSerial } = loaded;
    const { read, studioId } = transaction;
    const poolKeys = await this.poolKeys(transaction, actor, session, named);
    const facts: ScanFacts = {
      ...loaded,
      productsWithSerial:
        pieceSerial === null
          ? []
          : await this.lookUp.productsWithSerial(read, studioId, named.productIds, pieceSerial),
      another: dto.another === true,
      poolKeysOf: (productId) => poolKeys.get(productId) ?? [],
      standIns: [],
      productLabel: '',
    };
    const outcome = outcomeOf(judgeScan(facts, at, actor.timeZone));
    if (!wantsStandIns(outcome)) return outcome;
    const productId = outcome.thing?.productId ?? named.productIds[0] ?? '';
    const labels = await this.register.labels(read, actor.chainId, [productId]);
    const standIns = await this.standIns(transaction, actor, session, productId);
    const withStandIns = { ...facts, standIns, productLabel: labels.get(productId) ?? 'this product' };
    return outcomeOf(judgeScan(withStandIns, at, actor.timeZone));
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

  /** Keys of the pools of the products named; looked for only where the kit list names a configuration and not the product. */
  private async poolKeys(
    transaction: Transaction,
    actor: Actor,
    { kitItems }: TraySession,
    { productIds }: Named,
  ): Promise<Map<string, readonly string[]>> {
    const isSettled = productIds.every((productId) => onKitList(kitItems, productId, []) !== 'no');
    if (isSettled || !kitItems?.some((item) => item.configuration !== null)) return new Map();
    const pools = await this.pools.load(transaction.read, actor.chainId);
    return new Map(
      productIds.flatMap((productId) => {
        const pool = pools.find((one) => one.productIds.includes(productId));
        return pool ? [[productId, pool.poolKeys]] : [];
      }),
    );
  }
}

/** @throws Problem invalid-fields when a container was picked that is none of those named */
function outcomeOf(judgement: ScanJudgement): ScanOutcome {
  if (judgement.kind === 'another container') throw contradicts('containerId');
  return judgement.outcome;
}

function contradicts(field: keyof Pick): Problem {
  const what = { containerId: 'container', lotId: 'lot', productId: 'product' }[field];
  return invalidField(
    field,
    `The ${what} that was picked is another than what was scanned or picked besides. Pick one of those the answer offers, or leave ${field} out.`,
  );
}
