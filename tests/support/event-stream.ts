/** One server-sent event, as a page gets it. */
export interface StreamedEvent {
  name: string;
  id: string | undefined;
  data: unknown;
}

/**
 * Listens to server-sent events, parsed by the words of the HTML Living Standard, 9.2.6 [M]: lines of `field: value`, an
 * empty line ends an event, a line that begins with a colon says nothing.
 */
export class EventStream {
  readonly events: StreamedEvent[] = [];
  comments = 0;
  /** Settles when the service ended the stream. */
  readonly ended: Promise<void>;
  private wake: () => void = () => undefined;

  private constructor(
    readonly response: Response,
    private readonly abort: AbortController,
  ) {
    this.ended = this.listen();
  }

  static async open(address: string, headers: Record<string, string>): Promise<EventStream> {
    const abort = new AbortController();
    const response = await fetch(address, {
      headers: { accept: 'text/event-stream', ...headers },
      signal: abort.signal,
    });
    return new EventStream(response, abort);
  }

  /** Waits until so many events have come; how long says only when nothing more is to be hoped for. */
  async has(count: number, milliseconds = 20_000): Promise<StreamedEvent[]> {
    const deadline = Date.now() + milliseconds;
    while (this.events.length < count) {
      const left = deadline - Date.now();
      if (left <= 0)
        throw new Error(`Only ${this.events.length} of ${count} events came: ${JSON.stringify(this.events)}`);
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, left);
        this.wake = () => {
          clearTimeout(timer);
          resolve();
        };
      });
    }
    return this.events;
  }

  async close(): Promise<void> {
    this.abort.abort();
    await this.ended;
  }

  private async listen(): Promise<void> {
    const decoder = new TextDecoder();
    let text = '';
    try {
      for await (const chunk of this.response.body ?? []) {
        text += decoder.decode(chunk, { stream: true });
        const parts = text.split('\n\n');
        text = parts.pop() ?? '';
        for (const part of parts) this.take(part);
        this.wake();
      }
    } catch {
      // Closed here, or the connection broke.
    }
    this.wake();
  }

  private take(part: string): void {
    const fields = new Map<string, string>();
    for (const line of part.split('\n')) {
      if (line.startsWith(':')) this.comments += 1;
      else fields.set(line.slice(0, line.indexOf(':')), line.slice(line.indexOf(':') + 1).trim());
    }
    const data = fields.get('data');
    if (data === undefined) return;
    this.events.push({
      name: fields.get('event') ?? 'message',
      id: fields.get('id'),
      data: JSON.parse(data),
    });
  }
}
