import { Injectable } from '@nestjs/common';
import { placeholders, type Read } from '../platform/database/database.js';
import { type MixAddition, mixTotals } from './mix-totals.js';
import type { MixPartView, MixView } from './mixes.views.js';

/** What of one container is in one mix, with what it is called. */
export interface MixContent extends MixAddition {
  sessionId: string;
  productId: string;
  makerName: string;
  productName: string;
  shade: string | null;
  pigmentRole: string | null;
  lotCode: string | null;
}

/** Reads mixes: additions are kept one by one, and what is in a cup is always their sum by the one rule. */
@Injectable()
export class MixReader {
  /** What the mixes of sessions hold, in the order of the first addition. */
  async contents(read: Read, studioId: string, sessionIds: readonly string[]): Promise<MixContent[]> {
    if (sessionIds.length === 0) return [];
    const additions = await read<MixContent>(
      `SELECT mix_component.mix_id AS "mixId", mix_component.session_id AS "sessionId",
         mix_component.container_id AS "containerId", mix_component.lot_id AS "lotId", mix_component.drops,
         mix_component.microlitres, lot.code AS "lotCode", lot.product_id AS "productId",
         product.name AS "productName", product.shade, product.pigment_role AS "pigmentRole",
         maker.name AS "makerName"
       FROM mix_component
         JOIN lot ON lot.studio_id = mix_component.studio_id AND lot.id = mix_component.lot_id
         JOIN product ON product.chain_id = lot.chain_id AND product.id = lot.product_id
         JOIN maker ON maker.chain_id = product.chain_id AND maker.id = product.maker_id
       WHERE mix_component.studio_id = $1 AND mix_component.session_id IN (${placeholders(sessionIds)})
       ORDER BY mix_component.recorded_at, mix_component.id`,
      [studioId, ...sessionIds],
    );
    return mixTotals(additions);
  }

  /** Mixes by session id, in the order in which they were started; an empty cup has no parts. */
  async views(read: Read, studioId: string, sessionIds: readonly string[]): Promise<Map<string, MixView[]>> {
    const views = new Map<string, MixView[]>();
    if (sessionIds.length === 0) return views;
    const mixes = await read<Omit<MixView, 'parts' | 'microlitres'>>(
      `SELECT id, session_id AS "sessionId", label, occurred_at AS "occurredAt"
       FROM mix WHERE studio_id = $1 AND session_id IN (${placeholders(sessionIds)}) ORDER BY occurred_at, id`,
      [studioId, ...sessionIds],
    );
    const contents = mixes.length === 0 ? [] : await this.contents(read, studioId, sessionIds);
    for (const mix of mixes) {
      const parts = contents.filter((content) => content.mixId === mix.id).map(partView);
      const microlitres = parts.reduce((sum, part) => sum + part.microlitres, 0);
      const ofSession = views.get(mix.sessionId) ?? [];
      ofSession.push({ ...mix, parts, microlitres });
      views.set(mix.sessionId, ofSession);
    }
    return views;
  }
}

function partView({ mixId: _, sessionId: __, pigmentRole, ...part }: MixContent): MixPartView {
  return { ...part, isThinner: pigmentRole === 'thinner' };
}
