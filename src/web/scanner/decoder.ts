import type { ReadAnswer, ReadFailure, ReadRequest } from './decoder.protocol.js';

/** A picture could not be looked at; `no reader` is over only with a new decoder. */
export class ReadError extends Error {
  constructor(readonly failure: ReadFailure) {
    super(failure);
  }
}

type Picture = { frame: ImageBitmap } | { photo: Blob };

/** Reads the symbols of pictures in a worker, which is loaded with the first of them. */
export class Decoder {
  private worker: Worker | undefined;
  private readonly waiting = new Map<number, { settle(symbols: string[]): void; fail(error: Error): void }>();
  private lastId = 0;

  /**
   * @returns each symbol once, as its text with its symbology identifier in front
   * @throws ReadError when the picture is none, or the reader cannot be loaded
   */
  read(picture: Picture): Promise<string[]> {
    this.worker ??= this.start();
    this.lastId += 1;
    const request: ReadRequest = { id: this.lastId, ...picture };
    const answer = new Promise<string[]>((settle, fail) => this.waiting.set(request.id, { settle, fail }));
    this.worker.postMessage(request, 'frame' in picture ? [picture.frame] : []);
    return answer;
  }

  /** Whoever waits is told that there is no reader; the next picture starts another. */
  stop(): void {
    this.worker?.terminate();
    this.worker = undefined;
    for (const { fail } of this.waiting.values()) fail(new ReadError('no reader'));
    this.waiting.clear();
  }

  private start(): Worker {
    const worker = new Worker(new URL('./decoder.worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<ReadAnswer>) => {
      const asked = this.waiting.get(data.id);
      this.waiting.delete(data.id);
      if ('symbols' in data) return asked?.settle(data.symbols);
      asked?.fail(new ReadError(data.failed));
      if (data.failed === 'no reader') this.stop();
    };
    worker.onerror = () => this.stop();
    return worker;
  }
}
