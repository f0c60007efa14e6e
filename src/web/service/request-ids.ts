import { v7 as uuidv7 } from 'uuid';

/**
 * The ids of the writes of one form. Sent again with the same content, after a failure or a second press, a write has the
 * same id, so that the service carries it out once; other content is another write.
 */
export class RequestIds {
  private content: string | undefined;
  private id = '';

  for(content: object): string {
    const written = JSON.stringify(content);
    if (written !== this.content) {
      this.content = written;
      this.id = uuidv7();
    }
    return this.id;
  }

  /** After a success: the next write is a new one, also with the same content. */
  renew(): void {
    this.content = undefined;
  }
}
