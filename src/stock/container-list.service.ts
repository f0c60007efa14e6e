import { Injectable } from '@nestjs/common';
import { checkLabelCode } from '../catalogue/own-label.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, type SqlValue } from '../platform/database/database.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../platform/page.js';
import { notFound, Problem } from '../platform/problem.js';
import { containerCandidate } from './container-candidate.js';
import { type ContainerFact, ContainerFacts } from './container-facts.service.js';
import type { ContainerPageDto } from './container-list.dto.js';
import type { ContainerPageView, ContainerPickView, ShownContainerView } from './container-list.views.js';
import { assumedOpenedLife, ContainerViews, containerView } from './container-views.service.js';
import { orderFirstExpired } from './first-expired.js';
import { Reservations } from './reservations.service.js';

const maximumPicks = 100;
/** So many containers of one product are put in order, those likeliest to be taken first. */
const maximumOrdered = 2_000;

/** Finds containers: by place, lot or product, by the code on their label, and in the order in which to take them. */
@Injectable()
export class ContainerList {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly containerFacts: ContainerFacts,
    private readonly views: ContainerViews,
    private readonly reservations: Reservations,
  ) {}

  async page(actor: Actor, query: ContainerPageDto): Promise<ContainerPageView> {
    const { limit = defaultPageSize, after, placeId, lotId, productId, state } = query;
    await refuseUnknownStart(this.database.read, 'container', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId];
    const conditions = ['container.studio_id = $1'];
    const equals = (column: string, value: string | undefined) => {
      if (value !== undefined) conditions.push(`${column} = $${parameters.push(value)}`);
    };
    equals('container.place_id', placeId);
    equals('container.lot_id', lotId);
    equals('lot.product_id', productId);
    equals('container.state', state);
    if (state === undefined) conditions.push(`container.state NOT IN ('finished', 'discarded')`);
    if (after !== undefined) conditions.push(`container.id > $${parameters.push(after)}`);
    const rows = await this.database.read<{ id: string }>(
      `SELECT container.id FROM container
         JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
       WHERE ${conditions.join(' AND ')} ORDER BY container.id LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    const containerIds = shown.map(({ id }) => id);
    const items = await this.views.load(
      this.database.read,
      actor,
      { containerIds, ended: true },
      this.clock.now(),
    );
    return { items, next };
  }

  async show(actor: Actor, containerId: string): Promise<ShownContainerView> {
    const [container] = await this.views.load(
      this.database.read,
      actor,
      { containerIds: [containerId], ended: true },
      this.clock.now(),
    );
    if (!container) throw notFound('container', containerId);
    const onTrays = await this.reservations.of(this.database.read, actor.studioId, containerId);
    return { ...container, onTrays };
  }

  /** The container that carries a label, as scanned or typed by a person. */
  async byLabel(actor: Actor, text: string): Promise<ShownContainerView> {
    const reading = checkLabelCode(text.trim().slice(0, 60));
    if (!reading.ok) throw new Problem(400, 'unusable-symbol', reading.message);
    const [row] = await this.database.read<{ id: string }>(
      'SELECT id FROM container WHERE studio_id = $1 AND label_code = $2',
      [actor.studioId, reading.code],
    );
    if (!row)
      throw new Problem(404, 'not-found', `This studio has no container with the label ${reading.code}.`);
    return this.show(actor, row.id);
  }

  /** What is here of a product in the order in which to take it, and what must be left. */
  async pick(actor: Actor, productId: string): Promise<ContainerPickView> {
    const at = this.clock.now();
    const assumed = await assumedOpenedLife(this.database.read, actor.studioId);
    const facts = await this.containerFacts.load(this.database.read, actor.studioId, {
      containerIds: await this.likelyFirst(actor, productId),
    });
    const { order, excluded } = orderFirstExpired(
      facts.map((fact) => containerCandidate(fact, assumed, actor.timeZone)),
      at,
      actor.timeZone,
    );
    const show = (fact: ContainerFact) => containerView(fact, assumed, at, actor.timeZone);
    return {
      order: order.slice(0, maximumPicks).map(({ container }) => show(container)),
      leftOut: excluded
        .slice(0, maximumPicks)
        .map(({ candidate, reasons }) => ({ container: show(candidate.container), reasons })),
    };
  }

  private async likelyFirst(actor: Actor, productId: string): Promise<string[]> {
    const rows = await this.database.read<{ id: string }>(
      `SELECT container.id FROM lot
         JOIN container ON container.studio_id = lot.studio_id AND container.lot_id = lot.id
       WHERE lot.studio_id = $1 AND lot.product_id = $2 AND container.state NOT IN ('finished', 'discarded')
       ORDER BY CASE WHEN container.opened_at IS NULL THEN 1 ELSE 0 END,
         CASE WHEN lot.use_by IS NULL THEN 1 ELSE 0 END, lot.use_by, container.received_at, container.id
       LIMIT ${maximumOrdered}`,
      [actor.studioId, productId],
    );
    return rows.map(({ id }) => id);
  }
}
