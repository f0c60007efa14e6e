import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { RecallRegister } from '../recall-register.service.js';
import { contactAudiences } from '../vocabulary.js';
import type { EffectivenessDto } from './contacts.dto.js';
import type { EffectivenessView } from './contacts.views.js';
import { highestMet, judgedLevels, levelsCaveat, levelsSource, percentOf } from './effectiveness.js';
import { Recipients } from './recipients.service.js';

/** How well a recall reached those it had to reach. */
@Injectable()
export class Effectiveness {
  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly recipients: Recipients,
  ) {}

  async show(
    { studioId }: Actor,
    recallId: string,
    { agreedPercent = null }: { agreedPercent?: EffectivenessDto['agreedPercent'] | null },
  ): Promise<EffectivenessView> {
    const { read } = this.database;
    await this.register.find(read, studioId, recallId);
    const totals = await this.recipients.totals(read, studioId, recallId);
    const audiences = contactAudiences.map((audience) => {
      const own = totals[audience];
      const told = own.reached + own.refused;
      return { audience, ...own, told, toldPercent: percentOf(told, own.toTell) };
    });
    const checked = audiences.filter(({ audience }) => audience !== 'authority');
    const toTell = checked.reduce((sum, one) => sum + one.toTell, 0);
    const told = checked.reduce((sum, one) => sum + one.told, 0);
    const levels = judgedLevels(toTell, told, agreedPercent);
    return {
      audiences,
      ...{ toTell, told, toldPercent: percentOf(told, toTell) },
      levels,
      met: highestMet(levels),
      ...{ source: levelsSource, caveat: levelsCaveat },
    };
  }
}
