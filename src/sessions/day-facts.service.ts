import { Injectable } from '@nestjs/common';
import { ConfigurationPools } from '../catalogue/configuration-pools.service.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, type Read } from '../platform/database/database.js';
import { type ContainerFact, ContainerFacts } from '../stock/container-facts.service.js';
import type { DayContainerView, DayFactsView, DaySessionView } from './day-facts.views.js';
import { instantsOfDays } from './day-range.js';
import { MixReader } from './mix-reader.service.js';
import type { MixView } from './mixes.views.js';
import { type TraySession, TraySessions } from './tray-sessions.service.js';

/** More would be slow to judge on a device; a studio has hundreds. */
const mostContainers = 5_000;
const mostSessions = 200;
const mostRows = 20_000;

/** Tells a device what it needs to judge the trays of today without network, in a fixed number of look-ups. */
@Injectable()
export class DayFactsReader {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly traySessions: TraySessions,
    private readonly containerFacts: ContainerFacts,
    private readonly pools: ConfigurationPools,
    private readonly register: ProductRegister,
    private readonly mixReader: MixReader,
  ) {}

  async show(actor: Actor): Promise<DayFactsView> {
    const { read } = this.database;
    const { studioId, timeZone } = actor;
    const asOf = this.clock.now();
    const day = localDay(asOf, timeZone);
    const sessions = await this.sessions(read, actor, day);
    const lines = await this.lines(read, studioId);
    const laidOut = new Set(lines.map((line) => line.containerId));
    const known = await this.containersKnown(read, studioId, laidOut);
    // What lies on trays first, then what is open, since it is what is laid out most.
    const rank = ({ containerId, state }: ContainerFact) =>
      laidOut.has(containerId) ? 2 : Number(state === 'opened');
    const containers = known
      .sort((one, other) => rank(other) - rank(one))
      .slice(0, mostContainers)
      // In the order in which the service judges them.
      .sort((one, other) => (one.containerId < other.containerId ? -1 : 1));
    const productIds = new Set(containers.map((container) => container.productId));
    const lotIds = new Set(containers.map((container) => container.lotId));
    const pools = await this.pools.load(read, actor.chainId);
    return {
      studioId,
      asOf,
      day,
      timeZone,
      assumedOpenedLife: await this.assumedOpenedLife(read, studioId),
      sessions,
      containers: containers.map(dayContainer),
      labels: containers.map(({ labelCode: code, containerId, lotId, productId }) => ({
        ...{ code, containerId, lotId, productId },
      })),
      gtins: (await this.gtins(read, actor.chainId)).filter((row) => productIds.has(row.productId)),
      lotCodes: (await this.lotCodes(read, studioId)).filter((row) => lotIds.has(row.lotId)),
      lines,
      mixes: await this.mixesOf(read, studioId, sessions),
      usedSerials: await this.usedSerials(read, studioId),
      pools: pools
        .filter((pool) => pool.productIds.some((id) => productIds.has(id)))
        .map((pool) => ({ productIds: pool.productIds, poolKeys: pool.poolKeys })),
      containersLeftOut: known.length - containers.length,
    };
  }

  /** What is present, and what lies on a tray though it was recorded as gone. */
  private async containersKnown(
    read: Read,
    studioId: string,
    laidOut: ReadonlySet<string>,
  ): Promise<ContainerFact[]> {
    const present = await this.containerFacts.load(read, studioId, { all: true });
    const presentIds = new Set(present.map(({ containerId }) => containerId));
    const containerIds = [...laidOut].filter((id) => !presentIds.has(id));
    const gone = await this.containerFacts.load(read, studioId, { containerIds, ended: true });
    return [...present, ...gone];
  }

  private async mixesOf(
    read: Read,
    studioId: string,
    sessions: readonly DaySessionView[],
  ): Promise<MixView[]> {
    const inSetup = sessions.filter(({ state }) => state === 'in setup').map(({ id }) => id);
    return [...(await this.mixReader.views(read, studioId, inSetup)).values()].flat();
  }

  /** Those of the day that are still to come or in setup, and trays left from another day. */
  private async sessions(
    read: Read,
    { studioId, chainId, timeZone }: Actor,
    day: string,
  ): Promise<DaySessionView[]> {
    const range = instantsOfDays(day, day, timeZone);
    const rows = await read<NamedSession>(
      `SELECT session.id, client.reference AS "clientReference", procedure.name AS "procedureName"
       FROM session
         JOIN client ON client.studio_id = session.studio_id AND client.id = session.client_id
         JOIN procedure ON procedure.studio_id = session.studio_id AND procedure.id = session.procedure_id
       WHERE session.studio_id = $1 AND (session.state = 'in setup'
         OR (session.state = 'planned' AND session.planned_start >= $2 AND session.planned_start < $3))
       ORDER BY session.planned_start, session.id LIMIT ${mostSessions}`,
      [studioId, range?.from ?? '', range?.before ?? ''],
    );
    const loaded = await this.traySessions.many(
      read,
      studioId,
      rows.map((row) => row.id),
    );
    const kitItems = [...loaded.values()].flatMap((session) => session.kitItems ?? []);
    const labels = await this.register.labels(
      read,
      chainId,
      kitItems.flatMap((item) => item.productId ?? []),
    );
    return rows.flatMap((row) => {
      const session = loaded.get(row.id);
      return session ? [daySession(row, session, labels)] : [];
    });
  }

  private async assumedOpenedLife(read: Read, studioId: string): Promise<string | null> {
    const [row] = await read<{ life: string | null }>(
      'SELECT assumed_opened_life AS life FROM studio WHERE id = $1',
      [studioId],
    );
    return row?.life ?? null;
  }

  private gtins(read: Read, chainId: string) {
    return read<DayFactsView['gtins'][number]>(
      `SELECT gtin, product_id AS "productId", content_count AS "contentCount" FROM product_gtin
       WHERE chain_id = $1 ORDER BY gtin LIMIT ${mostRows}`,
      [chainId],
    );
  }

  private lotCodes(read: Read, studioId: string) {
    return read<DayFactsView['lotCodes'][number]>(
      `SELECT DISTINCT lot_code.code, lot.id AS "lotId", lot.product_id AS "productId", lot.use_by AS "useBy"
       FROM container
         JOIN lot ON lot.studio_id = container.studio_id AND lot.id = container.lot_id
         JOIN lot_code ON lot_code.studio_id = lot.studio_id AND lot_code.lot_id = lot.id
       WHERE container.studio_id = $1 AND container.state NOT IN ('finished', 'discarded')
       ORDER BY lot.id LIMIT ${mostRows}`,
      [studioId],
    );
  }

  private lines(read: Read, studioId: string) {
    return read<DayFactsView['lines'][number]>(
      `SELECT id, session_id AS "sessionId", container_id AS "containerId", lot_id AS "lotId",
         product_id AS "productId", pieces, serial, known_by AS "knownBy", admitted_at AS "admittedAt"
       FROM tray_line WHERE studio_id = $1 AND state = 'on tray' ORDER BY admitted_at, id LIMIT ${mostRows}`,
      [studioId],
    );
  }

  /** The latest first: a piece is shown again soon or not at all. */
  private usedSerials(read: Read, studioId: string) {
    return read<DayFactsView['usedSerials'][number]>(
      `SELECT product_id AS "productId", serial FROM tray_line
       WHERE studio_id = $1 AND serial IS NOT NULL AND settled_as IN ('used', 'opened unused')
       ORDER BY settled_at DESC, id LIMIT ${mostRows}`,
      [studioId],
    );
  }
}

interface NamedSession {
  id: string;
  clientReference: string;
  procedureName: string;
}

function daySession(
  named: NamedSession,
  session: TraySession,
  labels: ReadonlyMap<string, string>,
): DaySessionView {
  const { artistId, visitKind, state, plannedStart, touchUpFromDays, touchUpToDays } = session;
  const kitItems =
    session.kitItems?.map((item) => ({
      ...item,
      label: (item.productId === null ? item.configuration : labels.get(item.productId)) ?? '',
    })) ?? null;
  return { ...named, artistId, visitKind, state, plannedStart, touchUpFromDays, touchUpToDays, kitItems };
}

/** What its rules ask about, and nothing besides. */
function dayContainer(fact: ContainerFact): DayContainerView {
  const { containerId, lotId, productId, form, labelCode, state, ownerId, openedAt, receivedAt, pieces } =
    fact;
  const { code, useBy, kind, makerName, productName, shade, stockForm, openedLife, usableThrough } = fact;
  return {
    ...{ containerId, lotId, productId, form, labelCode, state, ownerId, openedAt, receivedAt, pieces },
    ...{ code, useBy, kind, makerName, productName, shade, stockForm, openedLife, usableThrough },
    holds: fact.holds.map((hold) => ({ kind: hold.kind, reason: hold.reason, on: hold.on })),
  };
}
