import type { Actor } from '../../src/platform/actor.js';
import type { ContainerView } from '../../src/stock/container-list.views.js';
import type { LotView } from '../../src/stock/lot-list.views.js';
import type { ArrivalView, TransferView } from '../../src/stock/transfers/transfers.views.js';
import { type RunningService, startService, type TestedEngine } from './service.js';
import { StockedStudio } from './stocked-studio.js';
import { Store } from './store.js';

/** One of the studios, acting through the API as its owner. */
export class StudioEnd extends StockedStudio {
  container(id: string): Promise<ContainerView> {
    return this.service.seen<ContainerView>(`/containers/${id}`);
  }

  lot(id: string): Promise<LotView> {
    return this.service.seen<LotView>(`/lots/${id}`);
  }

  transfer(id: string): Promise<TransferView> {
    return this.service.seen<TransferView>(`/transfers/${id}`);
  }

  /** Sends whole containers or parts of boxes. */
  send(to: StudioEnd, lines: object[], more: object = {}): Promise<TransferView> {
    const body = { receiverId: to.service.studioId, reason: 'They need it more', lines, ...more };
    return this.service.made<TransferView>('/transfers', body);
  }

  /** Records that every line arrived as it was sent, unless told otherwise line by line. */
  async arrive(transfer: TransferView, differing: object[] = []): Promise<ArrivalView> {
    return this.service.made<ArrivalView>(`/transfers/${transfer.id}/arrival`, {
      lines: await this.arrivedLines(transfer, differing),
    });
  }

  async arrivedLines(transfer: TransferView, differing: object[] = []): Promise<object[]> {
    const placeId = await this.shelf();
    return transfer.lines.map(({ id, balance }, index) => ({
      lineId: id,
      pieces: balance.sent.pieces,
      placeId,
      ...differing[index],
    }));
  }
}

/** A running service with two studios of one chain, and one of another. */
export class TwoStudios {
  private constructor(
    readonly store: Store,
    readonly here: StudioEnd,
    readonly there: StudioEnd,
    readonly stranger: StudioEnd,
    readonly chainId: string,
  ) {}

  /** @param starting `startStudio` for what asks studios alone; left out: a service of their own */
  static async start(
    engine: TestedEngine,
    timeZoneThere?: string,
    starting: (engine: TestedEngine) => Promise<RunningService> = startService,
  ): Promise<TwoStudios> {
    const service = await starting(engine);
    const store = await Store.open(service.dataFolder, service.databaseUrl);
    const [studio] = await store.database.read<{ chain_id: string }>(
      'SELECT chain_id FROM studio WHERE id = $1',
      [service.studioId],
    );
    const chainId = studio?.chain_id ?? '';
    const end = async (actor: Actor) => new StudioEnd(await store.seenBy(service, actor));
    const there = await end(await store.makeStudio(timeZoneThere, chainId));
    const stranger = await end(await store.makeStudio());
    return new TwoStudios(store, new StudioEnd(service), there, stranger, chainId);
  }

  /** A third studio of the chain. */
  async another(service: RunningService): Promise<StudioEnd> {
    const actor = await this.store.makeStudio(undefined, this.chainId);
    return new StudioEnd(await this.store.seenBy(service, actor));
  }

  async dispose(): Promise<void> {
    await this.store.close();
    await this.here.service.dispose();
  }
}
