import { Injectable } from '@nestjs/common';
import type { StudioActor } from '../../identity/actor.guard.js';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read } from '../../platform/database/database.js';
import { Transactions } from '../../platform/database/transactions.js';
import { type FieldFault, faultsProblem, notFound, refuseOtherVersion } from '../../platform/problem.js';
import { HandingOn } from '../handing-on/handing-on.entity.js';
import { AlertPreference } from './alert-preference.entity.js';
import type { SetAlertPreferenceDto } from './alert-preferences.dto.js';
import type { AlertPreferenceView, ToldPersonView } from './alert-preferences.views.js';
import { ToldPeople, type ToldPerson } from './told-people.service.js';

/** How each person of a studio is told of its alerts: everybody chooses for themselves. */
@Injectable()
export class AlertPreferences {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
    private readonly toldPeople: ToldPeople,
  ) {}

  async own(actor: StudioActor): Promise<AlertPreferenceView> {
    const everybody = await this.everybody(this.database.read, actor, this.clock.now());
    return viewOf(itself(everybody, actor.personId));
  }

  async all(actor: Actor): Promise<ToldPersonView[]> {
    const everybody = await this.everybody(this.database.read, actor, this.clock.now());
    return everybody.map((person) => {
      const leading = (kind: 'mail' | 'push') =>
        person.destinations.filter((destination) => destination.kind === kind).length;
      return {
        personId: person.personId,
        role: person.role,
        preference: viewOf(person),
        mailAddresses: leading('mail'),
        browsers: leading('push'),
      };
    });
  }

  /** @throws Problem stale-version when it was set elsewhere since it was read; invalid-fields */
  set(actor: StudioActor, dto: SetAlertPreferenceDto): Promise<AlertPreferenceView> {
    const { studioId, personId } = actor;
    const { id, version: from, ...chosen } = dto;
    refuseHalfQuietHours(dto);
    return this.transactions.write(
      actor,
      {
        id,
        action: 'alerts.set-preference',
        subject: { kind: 'person', id: personId },
        content: { ...dto, personId },
      },
      async (transaction) => {
        await transaction.lockStudio();
        const key = { studioId, personId };
        const known = await transaction.manager.findOneBy(AlertPreference, key);
        refuseOtherVersion('choice of how one is told', known?.version ?? null, from);
        const version = (known?.version ?? 0) + 1;
        const changes = { ...chosen, version, updatedAt: transaction.recordedAt };
        if (known) await transaction.update(AlertPreference, key, changes);
        else await transaction.insert(AlertPreference, { ...key, ...changes });
        return { personId, ...chosen, isDefault: false, version };
      },
    );
  }

  private async everybody(read: Read, { studioId, timeZone }: Actor, now: string): Promise<ToldPerson[]> {
    const chosen = await this.database.reader.manager.findOneBy(HandingOn, { studioId });
    return this.toldPeople.of(read, studioId, localDay(now, timeZone), chosen?.personIds ?? []);
  }
}

/** Whoever asks is at work here; only the end of their last day may have come in between. */
function itself(everybody: readonly ToldPerson[], personId: string): ToldPerson {
  const person = everybody.find((each) => each.personId === personId);
  if (!person) throw notFound('person', personId);
  return person;
}

function refuseHalfQuietHours({ quietFrom, quietUntil }: SetAlertPreferenceDto): void {
  const faults: FieldFault[] = [];
  if (quietFrom === null && quietUntil !== null)
    faults.push({
      field: 'quietFrom',
      message: 'Quiet hours have a beginning too; give both times, or neither',
    });
  if (quietFrom !== null && quietUntil === null)
    faults.push({ field: 'quietUntil', message: 'Quiet hours have an end too; give both times, or neither' });
  if (quietFrom !== null && quietFrom === quietUntil)
    faults.push({
      field: 'quietUntil',
      message: `Quiet hours end at another time than they begin, ${quietFrom}`,
    });
  if (faults.length > 0) throw faultsProblem(faults);
}

function viewOf({ personId, preference, version }: ToldPerson): AlertPreferenceView {
  return { personId, ...preference, isDefault: version === null, version };
}
