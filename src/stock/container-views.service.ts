import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import type { Read } from '../platform/database/database.js';
import { type ContainerChoice, type ContainerFact, ContainerFacts } from './container-facts.service.js';
import type { ContainerView } from './container-list.views.js';
import { productDays } from './date-thresholds/product-days.query.js';
import { lastUsableDay } from './opened-life.js';
import { judgeShelfLife } from './shelf-life.js';
import type { SummarySettings } from './stock-level-summary.js';
import { containerLife } from './stock-on-hand.js';

/** Shows containers with their life judged at an instant, inside a transaction or outside. */
@Injectable()
export class ContainerViews {
  constructor(private readonly containerFacts: ContainerFacts) {}

  /** In the order of their ids. */
  async load(read: Read, actor: Actor, choice: ContainerChoice, at: string): Promise<ContainerView[]> {
    const facts = await this.containerFacts.load(read, actor.studioId, choice);
    const assumed = await assumedOpenedLife(read, actor.studioId);
    return facts.map((fact) => containerView(fact, assumed, at, actor.timeZone));
  }
}

/** The opened life that the studio takes where the label gives none. */
export async function assumedOpenedLife(read: Read, studioId: string): Promise<string | null> {
  const [studio] = await read<{ assumed_opened_life: string | null }>(
    'SELECT assumed_opened_life FROM studio WHERE id = $1',
    [studioId],
  );
  return studio?.assumed_opened_life ?? null;
}

/** What the studio chose about how stock is summed up. */
export async function summarySettings(read: Read, studioId: string): Promise<SummarySettings> {
  const [settings] = await read<SummarySettings>(
    `SELECT assumed_opened_life AS "assumedOpenedLife", use_by_near_days AS "useByNearDays",
       opened_life_ending_days AS "openedLifeEndingDays"
     FROM studio WHERE id = $1`,
    [studioId],
  );
  const known = settings ?? { assumedOpenedLife: null, useByNearDays: 0, openedLifeEndingDays: 0 };
  return { ...known, ofProducts: await productDays(read, studioId) };
}

export function containerView(
  fact: ContainerFact,
  assumed: string | null,
  at: string,
  timeZone: string,
): ContainerView {
  const known = containerLife(fact, assumed);
  const { sentence, ...life } = judgeShelfLife(known, at, timeZone);
  const opened =
    fact.openedAt === null ? null : lastUsableDay({ ...known, useByLastDay: null, timeZone }).lastDay;
  return {
    id: fact.containerId,
    lotId: fact.lotId,
    productId: fact.productId,
    productName: fact.productName,
    shade: fact.shade,
    makerName: fact.makerName,
    kind: fact.kind,
    form: fact.form,
    labelCode: fact.labelCode,
    state: fact.state,
    placeId: fact.placeId,
    ownerId: fact.ownerId,
    openedAt: fact.openedAt,
    receivedAt: fact.receivedAt,
    pieces: fact.pieces,
    microlitres: fact.microlitres,
    lotCode: fact.code,
    codeState: fact.codeState,
    useBy: fact.useBy,
    useByPrecision: fact.useByPrecision,
    held: fact.holds.length > 0,
    holds: fact.holds,
    life: { ...life, openedLifeLastDay: opened, ...sentence },
    version: fact.version,
  };
}
