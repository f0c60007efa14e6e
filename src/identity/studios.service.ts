import { Injectable } from '@nestjs/common';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound } from '../platform/problem.js';
import { readOpenedLife } from './opened-life-duration.js';
import { Studio } from './studio.entity.js';
import { StudioChanges } from './studio-changes.service.js';
import type { ChangeStudioDto } from './studios.dto.js';
import type { StudioView } from './studios.views.js';

const maximumStudios = 200;

/** The settings that conditions are judged by. */
const judgedBy = ['timeZone', 'useByNearDays', 'openedLifeEndingDays', 'assumedOpenedLife'] as const;

/** Old and new values of the settings that changed; of the name only that it did. */
function differences(before: Studio, after: Studio): object[] {
  const settings = [...judgedBy, 'name', 'currency', 'morning', 'houseBlends'] as const;
  return settings
    .filter((field) => before[field] !== after[field])
    .map((field) => (field === 'name' ? { field } : { field, from: before[field], to: after[field] }));
}

function viewOf(studio: Studio): StudioView {
  const { chainId: _, createdAt: __, ...view } = studio;
  return view;
}

/** The studios kept here and their settings. */
@Injectable()
export class Studios {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly changes: StudioChanges,
  ) {}

  async list(): Promise<StudioView[]> {
    const studios = await this.database.reader.manager.find(Studio, {
      order: { createdAt: 'ASC', id: 'ASC' },
      take: maximumStudios,
    });
    return studios.map(viewOf);
  }

  async get(studioId: string): Promise<Studio> {
    const studio = await this.database.reader.manager.findOneBy(Studio, { id: studioId });
    if (!studio) throw notFound('studio', studioId);
    return studio;
  }

  async show(actor: Actor): Promise<StudioView> {
    return viewOf(await this.get(actor.studioId));
  }

  async change(actor: Actor, dto: ChangeStudioDto): Promise<StudioView> {
    const { id, version, ...changes } = dto;
    const life = dto.assumedOpenedLife == null ? null : readOpenedLife(dto.assumedOpenedLife);
    if (life !== null && 'error' in life) throw invalidField('assumedOpenedLife', life.error.message);
    return this.transactions.write(
      actor,
      {
        id,
        action: 'identity.change-studio',
        subject: { kind: 'studio', id: actor.studioId },
        content: dto,
      },
      async (transaction) => {
        const before = await transaction.manager.findOneByOrFail(Studio, { id: actor.studioId });
        const studio = await transaction.change(Studio, 'studio', { id: actor.studioId }, version, changes);
        transaction.note({ changes: differences(before, studio) });
        if (judgedBy.some((setting) => before[setting] !== studio[setting])) {
          await this.changes.follow(transaction);
        }
        return viewOf(studio);
      },
    );
  }
}
