import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { DataKeys } from '../../platform/encryption/data-keys.service.js';
import { withoutQuery } from '../../platform/notice-sources-setting.js';
import type { AlertDestination } from './alert-destination.entity.js';
import type { AlertDestinationView } from './alert-destinations.views.js';
import type { MailSettings, PushSettings, WebhookSettings } from './destination-settings.js';
import { settingsPlace } from './opened-destinations.service.js';

/** Shows destinations. Secrets and what may hold one are never shown. */
@Injectable()
export class DestinationViews {
  constructor(private readonly dataKeys: DataKeys) {}

  /** With their names and addresses, for who asks. */
  async opened(studioId: string, destinations: readonly AlertDestination[]): Promise<AlertDestinationView[]> {
    const sealers = await this.dataKeys.sealers(
      studioId,
      destinations.map(({ dataKeyId }) => dataKeyId),
    );
    return destinations.map((destination) => {
      const { id, dataKeyId, settingsSealed } = destination;
      const opened = sealers.get(dataKeyId)?.open(settingsSealed, settingsPlace(id)) ?? null;
      const view = sealedView(destination);
      return opened === null ? view : { ...view, ...shownOf(destination.kind, JSON.parse(opened)) };
    });
  }
}

/** Without what is sealed, as the answer to a write is kept. */
export function sealedView(destination: AlertDestination): AlertDestinationView {
  const { studioId: _, dataKeyId: __, settingsSealed: ___, ...view } = destination;
  return { ...view, name: null, address: null, fingerprint: null };
}

function shownOf(
  kind: AlertDestination['kind'],
  settings: unknown,
): Partial<Pick<AlertDestinationView, 'name' | 'address' | 'fingerprint'>> {
  switch (kind) {
    case 'mail':
      return { address: (settings as MailSettings).address };
    case 'webhook': {
      const { name, url } = settings as WebhookSettings;
      return { name, address: withoutQuery(url) };
    }
    case 'push': {
      const { name, endpoint } = settings as PushSettings;
      const fingerprint = createHash('sha256').update(endpoint, 'utf8').digest('hex');
      return { name, address: new URL(endpoint).host, fingerprint };
    }
  }
}
