import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database, placeholders } from '../platform/database/database.js';
import type { LotScope } from '../stock/lot-matching/lot-scope.js';
import { LotsEverHeld } from '../stock/lot-matching/lots-ever-held.service.js';
import type { MatchedLotsView, MatchedLotView } from './recalls.views.js';

/** So many lots of a scope are shown before it is opened; all are counted, and all are held when it is. */
const mostShown = 1_000;

type LotRow = Omit<MatchedLotView, 'grade' | 'itemIndex' | 'reasons'>;

/** What a scope meets in a studio, before anything is done. Writes nothing. */
@Injectable()
export class ScopeMatches {
  constructor(
    private readonly database: Database,
    private readonly lots: LotsEverHeld,
  ) {}

  async of({ chainId, studioId }: Actor, scope: LotScope): Promise<MatchedLotsView> {
    const graded = await this.lots.graded(this.database.read, chainId, studioId, scope);
    const certain = graded.filter(({ grade }) => grade === 'certain');
    const shown = [...certain, ...graded.filter(({ grade }) => grade === 'possible')].slice(0, mostShown);
    const rows = await this.rows(
      studioId,
      shown.map(({ lotId }) => lotId),
    );
    const here = new Map(rows.map((row) => [row.lotId, row]));
    return {
      certainLots: certain.length,
      possibleLots: graded.length - certain.length,
      items: shown.flatMap(({ lotId, grade, itemIndex, reasons }) => {
        const row = here.get(lotId);
        return row === undefined ? [] : [{ ...row, grade, itemIndex, reasons }];
      }),
    };
  }

  /** How many lots each of many scopes meets, without what they are. */
  async counts(
    { chainId, studioId }: Actor,
    scopes: readonly LotScope[],
  ): Promise<Pick<MatchedLotsView, 'certainLots' | 'possibleLots'>[]> {
    const { read } = this.database;
    const register = await this.lots.register(read, chainId);
    const found: Pick<MatchedLotsView, 'certainLots' | 'possibleLots'>[] = [];
    for (const scope of scopes) {
      const graded = await this.lots.gradedIn(read, studioId, this.lots.prepared(register, scope));
      const certainLots = graded.filter(({ grade }) => grade === 'certain').length;
      found.push({ certainLots, possibleLots: graded.length - certainLots });
    }
    return found;
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
}
