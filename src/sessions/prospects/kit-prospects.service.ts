import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import type { OpenCondition } from '../../alerts/open-condition.js';
import type { ConfigurationPool } from '../../catalogue/configuration-pool.js';
import { ConfigurationPools } from '../../catalogue/configuration-pools.service.js';
import { ProductRegister } from '../../catalogue/product-register.service.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import type { Read } from '../../platform/database/database.js';
import { type ContainerFact, ContainerFacts } from '../../stock/container-facts.service.js';
import { assumedOpenedLife } from '../../stock/container-views.service.js';
import { lastUsableDay } from '../../stock/opened-life.js';
import { containerLife } from '../../stock/stock-on-hand.js';
import { instantsOfDays } from '../day-range.js';
import type { KitNeed } from '../kit-lack.js';
import type { KitItem } from '../kit-list.entity.js';
import { trayLacking } from '../tray-lacking.js';
import { type TraySession, TraySessions } from '../tray-sessions.service.js';
import { type KitAhead, kitsLacking, type StockAhead } from './kit-prospect.js';
import { KIT_PROSPECT_DAYS, kitSeverity } from './kit-severity.js';

export const kitCannotBeFilled = 'kit cannot be filled';

/** More than a studio has rooms for; the nearest are judged. */
const mostSessions = 2_000;

interface NamedSession {
  id: string;
  procedureName: string;
}

interface LaidOut {
  sessionId: string;
  productId: string;
  containerId: string;
  pieces: number;
}

/** Finds the sessions of the next days whose kit cannot be filled, in a fixed number of look-ups however many there are. */
@Injectable()
export class KitProspects {
  constructor(
    private readonly traySessions: TraySessions,
    private readonly containerFacts: ContainerFacts,
    private readonly pools: ConfigurationPools,
    private readonly register: ProductRegister,
  ) {}

  /**
   * All that stands at an instant. A session in setup takes what its tray still lacks, but is not told of: whoever lays it
   * out sees it there. Bottles of an artist count for all, as they do at the tray.
   */
  async standing(
    read: Read,
    { studioId, chainId, timeZone }: Pick<Actor, 'studioId' | 'chainId' | 'timeZone'>,
    now: string,
  ): Promise<OpenCondition[]> {
    const today = localDay(now, timeZone);
    const named = await this.sessionsAhead(read, studioId, today, timeZone);
    const sessions = await this.traySessions.many(
      read,
      studioId,
      named.map(({ id }) => id),
    );
    const items = [...sessions.values()].flatMap(({ kitItems }) => kitItems ?? []);
    if (items.length === 0) return [];
    const pools = items.some(({ configuration }) => configuration !== null)
      ? await this.pools.load(read, chainId)
      : [];
    const productIds = productsOf(items, pools);
    const laidOut = await this.laidOut(read, studioId);
    const labels = await this.register.labels(read, chainId, productIds);
    const containers = await this.containerFacts.load(read, studioId, { productIds });
    const assumed = await assumedOpenedLife(read, studioId);
    const stock = containers.flatMap((container) => stockAhead(container, laidOut, pools, assumed, timeZone));
    const kits = named.flatMap(({ id }): KitAhead[] => {
      const session = sessions.get(id);
      return session?.plannedStart
        ? [kitAhead(session, session.plannedStart, laidOut, pools, labels, timeZone)]
        : [];
    });
    const procedureOf = new Map(named.map(({ id, procedureName }) => [id, procedureName]));
    const dayOf = new Map(kits.map(({ sessionId, day }) => [sessionId, day]));
    return kitsLacking(kits, stock)
      .filter(({ sessionId }) => sessions.get(sessionId)?.state === 'planned')
      .map(({ sessionId, lacks }): OpenCondition => {
        const day = dayOf.get(sessionId) ?? today;
        const lacking = lacks.map(({ label, quantityPieces }) => `${quantityPieces} × ${label}`);
        return {
          kind: kitCannotBeFilled,
          subjectKind: 'session',
          subjectId: sessionId,
          severity: kitSeverity(day, today),
          facts: { procedure: procedureOf.get(sessionId), day, lacking },
        };
      });
  }

  /** The nearest first. One that was planned for earlier today may still begin. */
  private sessionsAhead(
    read: Read,
    studioId: string,
    today: string,
    timeZone: string,
  ): Promise<NamedSession[]> {
    const lastDay = Temporal.PlainDate.from(today).add({ days: KIT_PROSPECT_DAYS }).toString();
    const range = instantsOfDays(today, lastDay, timeZone);
    return read<NamedSession>(
      `SELECT session.id, procedure.name AS "procedureName"
       FROM session JOIN procedure
         ON procedure.studio_id = session.studio_id AND procedure.id = session.procedure_id
       WHERE session.studio_id = $1 AND session.state IN ('planned', 'in setup')
         AND session.planned_start >= $2 AND session.planned_start < $3
       ORDER BY session.planned_start, session.id LIMIT ${mostSessions}`,
      [studioId, range?.from ?? '', range?.before ?? ''],
    );
  }

  private laidOut(read: Read, studioId: string): Promise<LaidOut[]> {
    return read<LaidOut>(
      `SELECT session_id AS "sessionId", product_id AS "productId", container_id AS "containerId", pieces
       FROM tray_line WHERE studio_id = $1 AND state = 'on tray'`,
      [studioId],
    );
  }
}

/** What kit lists name, and whatever stands for it. */
function productsOf(items: readonly KitItem[], pools: readonly ConfigurationPool[]): string[] {
  const keys = new Set(items.flatMap(({ configuration }) => configuration ?? []));
  const pooled = pools.filter(({ poolKeys }) => poolKeys.some((key) => keys.has(key)));
  return [
    ...new Set([
      ...items.flatMap(({ productId }) => productId ?? []),
      ...pooled.flatMap(({ productIds }) => productIds),
    ]),
  ];
}

function kitAhead(
  session: TraySession,
  startsAt: string,
  laidOut: readonly LaidOut[],
  pools: readonly ConfigurationPool[],
  labels: ReadonlyMap<string, string>,
  timeZone: string,
): KitAhead {
  const labelOf = (productId: string | null) => (productId === null ? undefined : labels.get(productId));
  const gaps = trayLacking(
    (session.kitItems ?? []).map((item) => ({
      ...item,
      label: labelOf(item.productId) ?? item.configuration ?? '',
    })),
    laidOut
      .filter(({ sessionId }) => sessionId === session.id)
      .map((line) => ({ ...line, label: labelOf(line.productId) ?? '' })),
    pools,
  );
  const needs = gaps.map(({ productId, configuration, label, quantityPieces }): KitNeed => {
    if (productId !== null) return { kind: 'product', productId, label, quantityPieces };
    const pool = pools.findIndex(({ poolKeys }) => poolKeys.includes(configuration ?? ''));
    return { kind: 'configuration pool', poolId: String(pool), label, quantityPieces };
  });
  return { sessionId: session.id, startsAt, day: localDay(startsAt, timeZone), needs };
}

function stockAhead(
  container: ContainerFact,
  laidOut: readonly LaidOut[],
  pools: readonly ConfigurationPool[],
  assumed: string | null,
  timeZone: string,
): StockAhead[] {
  const { containerId, productId, form, state, pieces, holds } = container;
  if (holds.length > 0 || state === 'practice only') return [];
  const reserved = laidOut
    .filter((line) => line.containerId === containerId)
    .reduce((sum, line) => sum + line.pieces, 0);
  const pool = pools.findIndex(({ productIds }) => productIds.includes(productId));
  return [
    {
      productId,
      poolId: pool === -1 ? null : String(pool),
      isShared: form === 'bottle',
      freePieces: pieces - (form === 'bottle' ? 0 : reserved),
      end: lastUsableDay({ ...containerLife(container, assumed), timeZone }),
    },
  ];
}
