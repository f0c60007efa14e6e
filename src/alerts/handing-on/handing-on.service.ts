import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, placeholders, type Read } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { refuseOtherVersion } from '../../platform/problem.js';
import { ToldPeople } from '../preferences/told-people.service.js';
import type { SetHandingOnDto } from './handing-on.dto.js';
import { HandingOn } from './handing-on.entity.js';
import type { HandingOnView } from './handing-on.views.js';
import { orderOfPeople } from './order-of-people.js';

/** Taken while a studio chose nothing. [C] */
export const assumedMinutes = 60;

/** Who is told of an urgent alert in what order, and after how long it goes on to the next. */
@Injectable()
export class HandingOnSettings {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly people: People,
    private readonly toldPeople: ToldPeople,
  ) {}

  async show({ studioId, timeZone }: Actor): Promise<HandingOnView> {
    const chosen = await this.database.reader.manager.findOneBy(HandingOn, { studioId });
    return this.viewOf(this.database.read, studioId, chosen, localDay(this.clock.now(), timeZone));
  }

  /**
   * Whoever left since the order was read is taken out of it, so that what else was changed is kept.
   * @throws Problem stale-version when it was set by someone else since it was read; not-found for who is not known
   */
  set(actor: Actor, dto: SetHandingOnDto): Promise<HandingOnView> {
    const { studioId } = actor;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'alerts.set-handing-on',
        subject: { kind: 'studio', id: studioId },
        content: dto,
      },
      async (transaction) => {
        await transaction.lockStudio();
        const known = await transaction.manager.findOneBy(HandingOn, { studioId });
        refuseOtherVersion('order of people', known?.version ?? null, dto.version);
        await this.people.require(transaction, dto.personIds);
        const { afterMinutes } = dto;
        const left = await whoLeft(transaction, dto.personIds);
        const personIds = dto.personIds.filter((id) => !left.includes(id));
        const version = (known?.version ?? 0) + 1;
        const chosen = { afterMinutes, personIds, version, updatedAt: transaction.recordedAt };
        if (known) await transaction.update(HandingOn, { studioId }, chosen);
        else await transaction.insert(HandingOn, { studioId, ...chosen });
        const day = localDay(transaction.recordedAt, actor.timeZone);
        const view = await this.viewOf(transaction.read, studioId, { studioId, ...chosen }, day);
        return { ...view, droppedPersonIds: left };
      },
    );
  }

  private async viewOf(
    read: Read,
    studioId: string,
    chosen: HandingOn | null,
    day: string,
  ): Promise<HandingOnView> {
    const { afterMinutes = assumedMinutes, personIds = [], version = null } = chosen ?? {};
    const people = await this.toldPeople.of(read, studioId, day, personIds);
    return {
      afterMinutes,
      personIds,
      order: orderOfPeople(people, personIds, null).map(({ personId }) => personId),
      isDefault: chosen === null,
      version,
      droppedPersonIds: [],
    };
  }
}

async function whoLeft(transaction: Transaction, personIds: readonly string[]): Promise<string[]> {
  if (personIds.length === 0) return [];
  const rows = await transaction.query<{ id: string }>(
    `SELECT id FROM person WHERE studio_id = $1 AND state = 'left' AND id IN (${placeholders(personIds, 2)})`,
    [transaction.studioId, ...personIds],
  );
  return rows.map(({ id }) => id);
}
