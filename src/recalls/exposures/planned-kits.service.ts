import { Injectable } from '@nestjs/common';
import type { ConfigurationPool } from '../../catalogue/configuration-pool.js';
import { ConfigurationPools } from '../../catalogue/configuration-pools.service.js';
import { productLabel } from '../../catalogue/product-label.js';
import { ProductRegister } from '../../catalogue/product-register.service.js';
import type { Actor } from '../../platform/actor.js';
import type { Read } from '../../platform/database/database.js';
import type { KitItem } from '../../sessions/kit-list.entity.js';
import { type TraySession, TraySessions } from '../../sessions/tray-sessions.service.js';
import { containerCandidate } from '../../stock/container-candidate.js';
import { type ContainerFact, ContainerFacts } from '../../stock/container-facts.service.js';
import { lastUsableDay } from '../../stock/opened-life.js';
import { Reservations } from '../../stock/reservations.service.js';
import type { ElseInDateView } from './planned-sessions.views.js';
import { type KitLineToCome, type KitSource, takenByKits } from './taken-by-kits.js';

const mostElseNamed = 5;

interface Line extends KitLineToCome {
  item: KitItem;
}

type Source = KitSource & { container: ContainerFact };

/** A line of a kit list that a lot of the recall would have served. */
export interface KitLineOfSession extends KitItem {
  sessionId: string;
  label: string;
  enoughElse: boolean;
  lotIds: string[];
  elseInDate: ElseInDateView[];
  elsePieces: number;
}

/** What the kit lists of sessions to come would have taken of a recall's lots. */
@Injectable()
export class PlannedKits {
  constructor(
    private readonly traySessions: TraySessions,
    private readonly pools: ConfigurationPools,
    private readonly register: ProductRegister,
    private readonly containerFacts: ContainerFacts,
    private readonly reservations: Reservations,
  ) {}

  /**
   * @param reachedProducts product by lot, of each lot in which the recall is
   * @param sessionIds in the order in which they are planned
   * @param now a session that should have begun is judged by today
   */
  async lines(
    read: Read,
    { studioId, chainId, timeZone }: Actor,
    reachedProducts: ReadonlyMap<string, string>,
    sessionIds: readonly string[],
    now: string,
  ): Promise<KitLineOfSession[]> {
    if (reachedProducts.size === 0) return [];
    const loaded = await this.traySessions.many(read, studioId, sessionIds);
    const sessions = sessionIds.flatMap((id) => loaded.get(id) ?? []);
    const byConfiguration = sessions.some(({ kitItems }) =>
      kitItems?.some(({ configuration }) => configuration !== null),
    );
    const pools = byConfiguration ? await this.pools.load(read, chainId) : [];
    const lines = concernedLines(sessions, pools, new Set(reachedProducts.values()), now);
    if (lines.length === 0) return [];
    const containers = await this.containerFacts.load(read, studioId, {
      productIds: lines.flatMap(({ productIds }) => productIds),
    });
    const reserved = await this.reservations.ofAll(
      read,
      studioId,
      containers.map(({ containerId }) => containerId),
    );
    const life = sessions[0]?.assumedOpenedLife ?? null;
    const sources = containers.map((container) =>
      sourceOf(
        container,
        reachedProducts.has(container.lotId),
        reserved.get(container.containerId)?.pieces ?? 0,
        {
          life,
          timeZone,
        },
      ),
    );
    const labels = await this.register.labels(
      read,
      chainId,
      lines.flatMap(({ item }) => item.productId ?? []),
    );
    return takenByKits(lines, sources, timeZone).map(({ line, recalled, enoughElse, elseInDate }) => ({
      ...line.item,
      sessionId: line.sessionId,
      label: (line.item.productId === null ? line.item.configuration : labels.get(line.item.productId)) ?? '',
      enoughElse,
      lotIds: [...new Set(recalled.map(({ container }) => container.lotId))],
      elseInDate: elseInDate.slice(0, mostElseNamed).map((other) => elseView(other, timeZone)),
      elsePieces: elseInDate.reduce((sum, { pieces }) => sum + pieces, 0),
    }));
  }
}

/** Lines that the recalled products may serve, and those that take of the same shelf. */
function concernedLines(
  sessions: readonly TraySession[],
  pools: readonly ConfigurationPool[],
  recalledProducts: ReadonlySet<string>,
  now: string,
): Line[] {
  const lines = sessions.flatMap(({ id: sessionId, artistId, plannedStart, kitItems }) =>
    (kitItems ?? []).map((item): Line => {
      const { productId, configuration, quantity: quantityPieces } = item;
      const pool =
        configuration === null ? undefined : pools.find(({ poolKeys }) => poolKeys.includes(configuration));
      const productIds = productId === null ? (pool?.productIds ?? []) : [productId];
      const at = plannedStart === null || plannedStart < now ? now : plannedStart;
      return { sessionId, artistId, at, productIds, quantityPieces, item };
    }),
  );
  const concerned = lines.filter(({ productIds }) => productIds.some((id) => recalledProducts.has(id)));
  const shelf = new Set(concerned.flatMap(({ productIds }) => productIds));
  return lines.filter(({ productIds }) => productIds.some((id) => shelf.has(id)));
}

function sourceOf(
  container: ContainerFact,
  recalled: boolean,
  reservedPieces: number,
  { life, timeZone }: { life: string | null; timeZone: string },
): Source {
  const { productId, ownerId, stockForm, holds } = container;
  const countedInPieces = stockForm === 'pieces';
  const pieces = countedInPieces ? container.pieces - reservedPieces : container.pieces;
  // Without the recall it would not be held by it.
  const otherHolds = recalled ? holds.filter(({ kind }) => kind !== 'recall') : holds;
  const candidate = containerCandidate({ ...container, holds: otherHolds, pieces }, life, timeZone);
  return { ...candidate, container, productId, ownerId, countedInPieces, pieces, recalled };
}

function elseView({ source, pieces }: { source: Source; pieces: number }, timeZone: string): ElseInDateView {
  const { containerId, labelCode, lotId, productId, code } = source.container;
  const { lastDay } = lastUsableDay({ ...source, timeZone });
  return {
    containerId,
    labelCode,
    lotId,
    lotCode: code,
    productId,
    label: productLabel(source.container),
    lastDay,
    pieces,
  };
}
