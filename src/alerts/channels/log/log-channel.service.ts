import { Injectable, Logger } from '@nestjs/common';
import { type AlertAnnouncement, alertWords } from '../alert-words.js';

/** Delivers alerts to the log of the service, one line each. */
@Injectable()
export class LogChannel {
  private readonly logger = new Logger('alert');

  /** @param deliveryId the same when a delivery is repeated, so that a reader can tell it from a new one */
  async send(deliveryId: string, announcement: AlertAnnouncement): Promise<void> {
    const line = `${alertWords(announcement)} [delivery ${deliveryId}]`;
    if (announcement.event !== 'closed' && announcement.severity !== 'notice') this.logger.warn(line);
    else this.logger.log(line);
  }
}
