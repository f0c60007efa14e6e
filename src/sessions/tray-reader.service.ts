import { Injectable } from '@nestjs/common';
import { ConfigurationPools } from '../catalogue/configuration-pools.service.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, type Read } from '../platform/database/database.js';
import { ContainerFacts } from '../stock/container-facts.service.js';
import type { KitItem } from './kit-list.entity.js';
import { refusedNow } from './refused-now.js';
import type { KitGapView, TrayLineView, TrayView } from './tray.views.js';
import { trayLacking } from './tray-lacking.js';
import { TraySessions } from './tray-sessions.service.js';
import { trayThing } from './tray-thing.js';

interface LineRow {
  id: string;
  containerId: string;
  pieces: number;
  knownBy: TrayLineView['knownBy'];
  admittedAt: string;
  state: TrayLineView['state'];
  settledAs: TrayLineView['settledAs'];
}

/** A tray as it lies: its lines, what has changed about them since, and what the kit lacks. */
@Injectable()
export class TrayReader {
  constructor(
    private readonly database: Database,
    private readonly sessions: TraySessions,
    private readonly containerFacts: ContainerFacts,
    private readonly register: ProductRegister,
    private readonly pools: ConfigurationPools,
    private readonly clock: Clock,
  ) {}

  async show(actor: Actor, sessionId: string): Promise<TrayView> {
    const { read } = this.database;
    const session = await this.sessions.load(read, actor.studioId, sessionId);
    const rows = await read<LineRow>(
      `SELECT id, container_id AS "containerId", pieces, known_by AS "knownBy", admitted_at AS "admittedAt", state,
         settled_as AS "settledAs"
       FROM tray_line WHERE studio_id = $1 AND session_id = $2 ORDER BY admitted_at, id`,
      [actor.studioId, sessionId],
    );
    const facts = await this.containerFacts.load(read, actor.studioId, {
      containerIds: rows.map((row) => row.containerId),
      ended: true,
    });
    const byId = new Map(facts.map((fact) => [fact.containerId, fact]));
    const now = this.clock.now();
    const lines = rows.flatMap((row): TrayLineView[] => {
      const fact = byId.get(row.containerId);
      if (!fact) return [];
      const thing = trayThing(fact, session.assumedOpenedLife, []);
      const { productId, lotId, containerId, label, labelCode, lotCode, stockForm, isPigment } = thing;
      const onTray = row.state === 'on tray';
      return [
        {
          ...{ productId, lotId, containerId, label, labelCode, lotCode, stockForm, isPigment },
          id: row.id,
          pieces: row.pieces,
          knownBy: row.knownBy,
          admittedAt: row.admittedAt,
          state: row.state,
          settledAs: row.settledAs,
          refusedNow: onTray ? refusedNow(thing, now, actor.timeZone) : [],
        },
      ];
    });
    // What was opened and thrown away has to be laid out once more.
    const laidOut =
      session.state === 'in setup' ? lines.filter((line) => line.settledAs !== 'opened unused') : lines;
    const lacking =
      session.kitItems === null ? [] : await this.lacking(read, actor.chainId, session.kitItems, laidOut);
    return { sessionId, state: session.state, version: session.version, lines, lacking };
  }

  private async lacking(
    read: Read,
    chainId: string,
    kitItems: readonly KitItem[],
    lines: readonly TrayLineView[],
  ): Promise<KitGapView[]> {
    const pools = await this.pools.load(read, chainId);
    const names = await this.register.labels(
      read,
      chainId,
      kitItems.flatMap((item) => item.productId ?? []),
    );
    const called = kitItems.map((item) => ({
      ...item,
      label:
        item.productId === null ? (item.configuration ?? '') : (names.get(item.productId) ?? item.productId),
    }));
    return trayLacking(
      called,
      lines.filter((line) => line.state !== 'taken off'),
      pools,
    );
  }
}
