import { Injectable } from '@nestjs/common';
import { localDay } from '../identity/local-day.js';
import type { Actor } from '../platform/actor.js';
import { Clock } from '../platform/clock.js';
import { Database, placeholders } from '../platform/database/database.js';
import type { LotScope } from '../stock/lot-matching/lot-scope.js';
import { LotsEverHeld } from '../stock/lot-matching/lots-ever-held.service.js';
import { type KnownProduct, readNotice } from './notice-reading/notice-reading.js';
import type { MatchScopeDto, ReadNoticeDto } from './recalls.dto.js';
import type { MatchedLotsView, MatchedLotView, NoticeReadingView } from './recalls.views.js';
import { StatedScopes } from './stated-scopes.service.js';

/** So many lots of a scope are shown before it is opened; all are counted, and all are held when it is. */
const mostShown = 1_000;
/** So many products of the register are looked for by name in a notice. */
const mostKnownProducts = 20_000;

type LotRow = Omit<MatchedLotView, 'grade' | 'itemIndex' | 'reasons'>;
type KnownProductRow = Omit<KnownProduct, 'gtins'> & { gtins: string | null };

/** Reads notices and tells what a scope meets here. Writes nothing. */
@Injectable()
export class NoticeReadings {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly lots: LotsEverHeld,
    private readonly statedScopes: StatedScopes,
  ) {}

  async read(actor: Actor, { text }: ReadNoticeDto): Promise<NoticeReadingView> {
    const reading = readNotice(text, {
      today: localDay(this.clock.now(), actor.timeZone),
      knownProducts: await this.knownProducts(actor.chainId),
    });
    return { ...reading, matches: await this.matches(actor, reading.scope) };
  }

  /** @throws Problem invalid-fields */
  async match(actor: Actor, { scope }: MatchScopeDto): Promise<MatchedLotsView> {
    return this.matches(actor, await this.statedScopes.scope(this.database.read, actor.chainId, scope));
  }

  private async matches({ chainId, studioId }: Actor, scope: LotScope): Promise<MatchedLotsView> {
    const graded = await this.lots.graded(this.database.read, chainId, studioId, scope);
    const certain = graded.filter(({ grade }) => grade === 'certain');
    const shown = [...certain, ...graded.filter(({ grade }) => grade === 'possible')].slice(0, mostShown);
    const here = new Map(
      (
        await this.rows(
          studioId,
          shown.map(({ lotId }) => lotId),
        )
      ).map((row) => [row.lotId, row]),
    );
    return {
      certainLots: certain.length,
      possibleLots: graded.length - certain.length,
      items: shown.flatMap(({ lotId, grade, itemIndex, reasons }) => {
        const row = here.get(lotId);
        return row === undefined ? [] : [{ ...row, grade, itemIndex, reasons }];
      }),
    };
  }

  private async rows(studioId: string, lotIds: readonly string[]): Promise<LotRow[]> {
    if (lotIds.length === 0) return [];
    return this.database.read<LotRow>(
      `SELECT lot.id AS "lotId", lot.product_id AS "productId", maker.name AS "makerName",
         product.name AS "productName", product.shade, lot.code, lot.use_by AS "useBy",
         (SELECT coalesce(sum(pieces), 0) FROM balance
          WHERE balance.studio_id = $1 AND balance.lot_id = lot.id) AS "onHandPieces",
         (SELECT coalesce(sum(microlitres), 0) FROM balance
          WHERE balance.studio_id = $1 AND balance.lot_id = lot.id) AS "onHandMicrolitres",
         (SELECT count(*) FROM container
          WHERE container.studio_id = $1 AND container.lot_id = lot.id
            AND container.state IN ('sealed', 'opened', 'practice only')) AS containers,
         (SELECT count(DISTINCT client_id) FROM session_use
          WHERE session_use.studio_id = $1 AND session_use.lot_id = lot.id AND NOT EXISTS (
            SELECT 1 FROM session_use_reversal AS reversed
            WHERE reversed.studio_id = $1 AND reversed.use_id = session_use.id)) AS clients
       FROM lot
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE lot.studio_id = $1 AND lot.id IN (${placeholders(lotIds)})`,
      [studioId, ...lotIds],
    );
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
