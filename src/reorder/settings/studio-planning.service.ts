import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { refuseOtherVersion, staleVersion } from '../../platform/problem.js';
import { effectiveSettings } from './effective-settings.js';
import { type AssumptionCode, planningAssumptions, usedAssumption } from './planning-assumptions.js';
import type { SetPlanningSettingsDto } from './planning-settings.dto.js';
import { PlanningSettings } from './planning-settings.entity.js';
import { planningSettings } from './planning-settings.query.js';
import type { PlanningSettingsView } from './planning-settings.views.js';

/** How a studio plans. What is not set is assumed, and shown as such. */
@Injectable()
export class StudioPlanning {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
  ) {}

  show(actor: Actor): Promise<PlanningSettingsView> {
    return this.view(this.database.read, actor);
  }

  /** @throws Problem stale-version when somebody else set them since they were read */
  set(actor: Actor, dto: SetPlanningSettingsDto): Promise<PlanningSettingsView> {
    const { id, version, ...given } = dto;
    const { studioId } = actor;
    return this.transactions.write(
      actor,
      {
        id,
        action: 'reorder.set-planning-settings',
        subject: { kind: 'studio', id: studioId },
        content: dto,
      },
      async (transaction) => {
        // One at a time, so that two who set the first ones do not meet in the key.
        await transaction.lockStudio();
        const present = await transaction.manager.findOneBy(PlanningSettings, { studioId });
        refuseOtherVersion('planning', present?.version ?? null, version);
        const settings = {
          serviceTargetPerMille: given.serviceTargetPerMille ?? null,
          orderCostMinor: given.orderCostMinor ?? null,
          holdingPerYearPerMille: given.holdingPerYearPerMille ?? null,
          returnPerMille: given.returnPerMille ?? null,
          updatedAt: transaction.recordedAt,
        };
        if (present === null) {
          await transaction.insert(PlanningSettings, { studioId, version: 1, ...settings });
        } else {
          const where = { studioId, version: present.version };
          const changes = { ...settings, version: present.version + 1 };
          if (!(await transaction.update(PlanningSettings, where, changes))) {
            throw staleVersion('planning', present.version);
          }
        }
        transaction.note({ fields: Object.keys(given) });
        return this.view(transaction.read, actor);
      },
    );
  }

  private async view(read: Read, { studioId }: Actor): Promise<PlanningSettingsView> {
    const { settings, version, currency } = await planningSettings(read, studioId);
    return {
      ...effectiveSettings(settings),
      currency,
      assumptions: (Object.keys(planningAssumptions) as AssumptionCode[]).map(usedAssumption),
      version,
    };
  }
}
