import { v7 as uuidv7 } from 'uuid';
import type { SeededRandom } from './random.js';
import type { ReceivedLine, SampleStudio } from './sample-studio.js';
import type { Answer, RunningService } from './service.js';

/** A write as a client made it, to be sent again when no answer came. */
export interface SentWrite {
  path: string;
  body: { id: string } & Record<string, unknown>;
  /** The row that must be there once it was acknowledged. */
  leaves: { table: string; id: string };
  answer: Answer | undefined;
  /** When it was sent, in milliseconds of this process, and whether it was refused since the service ends. */
  sentAt: number;
  turnedAway: boolean;
}

interface Shelf {
  bottles: { id: string; labelCode: string; opened: boolean }[];
  boxes: { id: string; labelCode: string }[];
}

interface Scanned {
  verdict: string;
  trayLineId: string | null;
}

/**
 * The work of a busy studio, written by several people at once: deliveries, openings, visits with tray, mix and
 * completion, and whatever else comes in between. Remembers every write and whether it was answered.
 */
export class StudioLoad {
  readonly acknowledged: SentWrite[] = [];
  readonly refused: SentWrite[] = [];
  readonly unanswered = new Set<SentWrite>();
  private readonly shelf: Shelf = { bottles: [], boxes: [] };
  private deliveries = 0;

  constructor(
    public service: RunningService,
    private readonly studio: SampleStudio,
    private readonly random: SeededRandom,
  ) {}

  /** Works until the service is gone. @throws when the service answers that something went wrong on its side */
  async run(workers: number): Promise<void> {
    const service = this.service;
    const outcomes = await Promise.allSettled(Array.from({ length: workers }, () => this.work(service)));
    for (const outcome of outcomes) {
      if (outcome.status === 'rejected' && !isGone(outcome.reason)) throw outcome.reason;
    }
  }

  private async work(service: RunningService): Promise<never> {
    const tasks = [
      () => this.receive(service),
      () => this.visit(service),
      () => this.visit(service),
      () => this.addPerson(service),
      () => this.waste(service),
    ];
    if (this.shelf.boxes.length === 0 || this.shelf.bottles.length === 0) await this.receive(service);
    for (;;) await this.random.pick(tasks)();
  }

  private async send<Body>(
    service: RunningService,
    path: string,
    table: string,
    fields: object,
    leavesId?: string,
  ): Promise<Body> {
    const id = uuidv7();
    const write: SentWrite = {
      path,
      body: { id, ...fields },
      leaves: { table, id: leavesId ?? id },
      answer: undefined,
      sentAt: performance.now(),
      turnedAway: false,
    };
    this.unanswered.add(write);
    const answer = await service.post<Body>(path, write.body);
    if (answer.status === 503) {
      write.turnedAway = true;
      throw new ServiceEnding(`POST ${path} was refused, since the service ends.`);
    }
    write.answer = answer;
    this.unanswered.delete(write);
    if (answer.status >= 500) throw new Error(`POST ${path} was answered ${JSON.stringify(answer)}`);
    (answer.status < 300 ? this.acknowledged : this.refused).push(write);
    return answer.body;
  }

  private async addPerson(service: RunningService): Promise<void> {
    await this.send(service, '/people', 'person', { name: 'Vera Holm', role: 'artist' });
  }

  private async receive(service: RunningService): Promise<void> {
    const { studio, random } = this;
    this.deliveries += 1;
    const soon = new Date(Date.now() + 20 * 86_400_000).toISOString().slice(0, 10);
    const line = (productId: string, quantity: number, useBy: string | null) => ({
      productId,
      codes: [{ kind: 'lot', code: `L${this.deliveries}-${random.between(1, 1_000_000)}` }],
      useBy,
      quantity,
      placeId: studio.placeId,
    });
    const answer = await this.send<{ lines: ReceivedLine[] }>(service, '/deliveries', 'delivery', {
      origin: 'gift or sample',
      lines: [
        line(studio.umberId, random.between(1, 3), '2099-12-31'),
        line(studio.linerId, random.between(3, 20), '2099-12-31'),
        // One that ends soon opens an alert; one without a date is put aside.
        line(studio.thinnerId, 1, random.pick([soon, null])),
      ],
    });
    const [bottles, box] = answer.lines;
    for (const container of bottles?.containers ?? [])
      this.shelf.bottles.push({ ...container, opened: false });
    for (const container of box?.containers ?? []) this.shelf.boxes.push(container);
  }

  private async waste(service: RunningService): Promise<void> {
    const box = this.random.pick(this.shelf.boxes);
    const path = `/containers/${box.id}/waste`;
    await this.send(service, path, 'container', { pieces: 1, reason: 'fell down' }, box.id);
  }

  private async visit(service: RunningService): Promise<void> {
    const { studio, random } = this;
    const bottle = random.pick(this.shelf.bottles);
    const box = random.pick(this.shelf.boxes);
    const session = await this.send<{ id: string }>(service, '/sessions/walk-in', 'session', {
      client: { name: 'Nora Feld' },
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'first session',
    });
    const at = `/sessions/${session.id}`;
    const scan = (labelCode: string) =>
      this.send<Scanned>(service, `${at}/scans`, 'scan', { symbol: labelCode });
    const scannedBottle = await scan(bottle.labelCode);
    if (!bottle.opened) {
      bottle.opened = true;
      await this.send(service, `/containers/${bottle.id}/open`, 'container', {}, bottle.id);
    }
    await scan(box.labelCode);
    if (scannedBottle.trayLineId !== null) {
      const mix = await this.send<{ id: string }>(service, `${at}/mixes`, 'mix', { label: 'base' });
      const added = { containerId: bottle.id, drops: random.between(1, 6) };
      await this.send(service, `${at}/mixes/${mix.id}/components`, 'mix_component', added);
    }
    const completion = { lines: [], complications: null, signedBy: studio.ownerId };
    await this.send(service, `${at}/completion`, 'session', completion, session.id);
  }
}

/** The service takes nothing new any more; what it refused so counts as unanswered. */
class ServiceEnding extends Error {}

/** Whether a request failed for lack of anyone who answers. */
function isGone(error: unknown): boolean {
  if (error instanceof ServiceEnding) return true;
  return error instanceof TypeError && (error.message === 'fetch failed' || error.message === 'terminated');
}
