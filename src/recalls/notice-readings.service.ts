import { Injectable } from '@nestjs/common';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database } from '../platform/database/database.js';
import { type KnownProduct, readNotice } from './notice-reading/notice-reading.js';
import type { MatchScopeDto, ReadNoticeDto } from './recalls.dto.js';
import type { MatchedLotsView, NoticeReadingView } from './recalls.views.js';
import { ScopeMatches } from './scope-matches.service.js';
import { StatedScopes } from './stated-scopes.service.js';

/** So many products of the register are looked for by name in a notice. */
const mostKnownProducts = 20_000;

type KnownProductRow = Omit<KnownProduct, 'gtins'> & { gtins: string | null };

/** Reads notices and tells what a scope meets here. Writes nothing. */
@Injectable()
export class NoticeReadings {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly matches: ScopeMatches,
    private readonly statedScopes: StatedScopes,
  ) {}

  async read(actor: Actor, { text }: ReadNoticeDto): Promise<NoticeReadingView> {
    const reading = readNotice(text, {
      today: localDay(this.clock.now(), actor.timeZone),
      knownProducts: await this.knownProducts(actor.chainId),
    });
    return { ...reading, matches: await this.matches.of(actor, reading.scope) };
  }

  /** @throws Problem invalid-fields */
  async match(actor: Actor, { scope }: MatchScopeDto): Promise<MatchedLotsView> {
    return this.matches.of(actor, await this.statedScopes.scope(this.database.read, actor.chainId, scope));
  }

  private async knownProducts(chainId: string): Promise<KnownProduct[]> {
    const rows = await this.database.read<KnownProductRow>(
      `SELECT product.id AS "productId", maker.name AS "makerName", product.name AS "productName", product.shade,
         (SELECT ${this.database.engine === 'postgres' ? `string_agg(gtin, ' ')` : `group_concat(gtin, ' ')`}
          FROM product_gtin
          WHERE product_gtin.chain_id = product.chain_id AND product_gtin.product_id = product.id) AS gtins
       FROM product JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE product.chain_id = $1 ORDER BY product.id LIMIT ${mostKnownProducts}`,
      [chainId],
    );
    return rows.map(({ gtins, ...product }) => ({
      ...product,
      gtins: gtins === null ? [] : gtins.split(' '),
    }));
  }
}
