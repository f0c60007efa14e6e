import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { placeholders } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { latestBlendUseBy, outlasts } from './blend-admission.js';
import { ContainerFacts } from './container-facts.service.js';
import { assumedOpenedLife } from './container-views.service.js';
import { Lot } from './lot.entity.js';
import { containerLife } from './stock-on-hand.js';

/** What was put right: a lot's use-by, or when one of its containers was opened. */
export type CorrectedParent = { lotIds: readonly string[] } | { lotId: string; containerId: string };

/**
 * Keeps house blends from outlasting what they were poured of, when a date of a parent is put right afterwards. A date
 * that was wrong the other way leaves the blend as it is: what a person chose may be earlier.
 */
@Injectable()
export class BlendDates {
  constructor(private readonly containerFacts: ContainerFacts) {}

  /**
   * Corrects every blend poured of it, at any depth, that would outlast its parents; call it once the parent is written.
   * @returns the products of the corrected blends, whose conditions are to be judged anew
   */
  async follow(transaction: Transaction, corrected: CorrectedParent): Promise<string[]> {
    const assumed = await assumedOpenedLife(transaction.read, transaction.studioId);
    const changes: { lotId: string; from: string | null; to: string | null }[] = [];
    const productIds = new Set<string>();
    let parents = await this.blendsOf(transaction, corrected);
    while (parents.size > 0) {
      const { studioId } = transaction;
      await transaction.lock('lot', [...parents.keys()]);
      const blends = await transaction.manager.find(Lot, {
        where: { studioId, id: In([...parents.keys()]) },
        order: { id: 'ASC' },
      });
      const facts = await this.containerFacts.load(transaction.read, studioId, {
        containerIds: [...parents.values()].flat(),
        ended: true,
      });
      const lives = new Map(facts.map((fact) => [fact.containerId, containerLife(fact, assumed)]));
      const changedLotIds: string[] = [];
      for (const { id, version, useBy, productId } of blends) {
        const poured = (parents.get(id) ?? []).flatMap((containerId) => lives.get(containerId) ?? []);
        const latest = latestBlendUseBy(poured, transaction.actor.timeZone);
        if (!outlasts(useBy, latest)) continue;
        const dates: Partial<Lot> = { useBy: latest, useByPrecision: 'day' };
        await transaction.change(Lot, 'lot', { studioId, id }, version, dates);
        changes.push({ lotId: id, from: useBy, to: latest });
        productIds.add(productId);
        changedLotIds.push(id);
      }
      parents = await this.blendsOf(transaction, { lotIds: changedLotIds });
    }
    if (changes.length > 0) {
      const { blendUseByCorrected: before } = transaction.notes;
      transaction.note({ blendUseByCorrected: [...(Array.isArray(before) ? before : []), ...changes] });
    }
    return [...productIds];
  }

  /** Every blend poured of it by its lot id, with all containers that were poured into it. */
  private async blendsOf(
    transaction: Transaction,
    corrected: CorrectedParent,
  ): Promise<Map<string, string[]>> {
    const lotIds = 'lotIds' in corrected ? corrected.lotIds : [corrected.lotId];
    if (lotIds.length === 0) return new Map();
    const ofContainer = 'containerId' in corrected ? [corrected.containerId] : [];
    const rows = await transaction.query<{ lotId: string; containerId: string }>(
      `SELECT DISTINCT beside.lot_id AS "lotId", beside.parent_container_id AS "containerId"
       FROM blend_parent AS poured
         JOIN blend_parent AS beside ON beside.studio_id = poured.studio_id AND beside.lot_id = poured.lot_id
       WHERE poured.studio_id = $1 AND poured.parent_lot_id IN (${placeholders(lotIds)})
         ${ofContainer.map(() => `AND poured.parent_container_id = $${lotIds.length + 2}`).join('')}`,
      [transaction.studioId, ...lotIds, ...ofContainer],
    );
    const blends = new Map<string, string[]>();
    for (const { lotId, containerId } of rows) {
      blends.set(lotId, [...(blends.get(lotId) ?? []), containerId]);
    }
    return blends;
  }
}
