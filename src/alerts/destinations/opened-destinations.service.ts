import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';
import { SendFailure } from '../channels/send-failure.js';
import type { AlertDestination } from './alert-destination.entity.js';
import type {
  DestinationSettings,
  MailSettings,
  PushSettings,
  WebhookSettings,
} from './destination-settings.js';

export const settingsPlace = (destinationId: string) => `alert_destination.settings:${destinationId}`;

/** Opens what is sealed of a destination, for sending. */
@Injectable()
export class OpenedDestinations {
  constructor(
    private readonly database: Database,
    private readonly dataKeys: DataKeys,
    private readonly clock: Clock,
  ) {}

  mail(destination: AlertDestination): Promise<MailSettings> {
    return this.settings<MailSettings>(destination);
  }

  webhook(destination: AlertDestination): Promise<WebhookSettings> {
    return this.settings<WebhookSettings>(destination);
  }

  push(destination: AlertDestination): Promise<PushSettings> {
    return this.settings<PushSettings>(destination);
  }

  /**
   * Whoever works in the studio no more is told nothing, also of what was promised before.
   * @throws SendFailure isGone
   */
  async refuseWhoLeft({ studioId, personId }: AlertDestination): Promise<void> {
    if (personId === null) return;
    const [person] = await this.database.read<{ state: string; until: string | null; time_zone: string }>(
      `SELECT person.state, person.until, studio.time_zone
       FROM person JOIN studio ON studio.id = person.studio_id
       WHERE person.studio_id = $1 AND person.id = $2`,
      [studioId, personId],
    );
    const works =
      person !== undefined &&
      person.state === 'active' &&
      (person.until === null || person.until >= localDay(this.clock.now(), person.time_zone));
    if (!works) throw new SendFailure('Its person works in the studio no more.', true, null, true);
  }

  private async settings<Settings extends DestinationSettings>(
    destination: AlertDestination,
  ): Promise<Settings> {
    const { studioId, id, dataKeyId, settingsSealed } = destination;
    const sealer = await this.dataKeys.sealer(studioId, dataKeyId);
    const opened = sealer?.open(settingsSealed, settingsPlace(id)) ?? null;
    if (opened === null) throw new SendFailure('The address was erased.', true, null, true);
    return JSON.parse(opened) as Settings;
  }
}
