import { RequestIds } from './request-ids.js';

/** The id of a write of something that happened, and when it did by the clock of this device. */
export interface Event {
  id: string;
  occurredAt: string;
}

/** As `RequestIds`, for what happened: sent again after a failure it has the same id and the same instant. */
export class Events {
  private readonly ids = new RequestIds();
  private last: Event | undefined;

  of(content: object): Event {
    const id = this.ids.for(content);
    if (this.last?.id !== id) this.last = { id, occurredAt: new Date().toISOString() };
    return this.last;
  }

  /** After a success: the next one is another, also with the same content. */
  renew(): void {
    this.ids.renew();
  }
}
