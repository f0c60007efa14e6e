import { v7 as uuidv7 } from 'uuid';
import type { ContainerChangeView } from '../../src/stock/container-operations.views.js';
import type { ReceiptView, ReceivedLineView } from '../../src/stock/receiving.views.js';
import type { RunningService } from './service.js';

interface Made {
  id: string;
}

/** A product to be made, with what differs from an ordinary bottle of brown or box of liners. */
export interface GivenProduct {
  name: string;
  kind?: 'pigment' | 'cartridge' | 'consumable';
  [field: string]: unknown;
}

/** Goods to be received of one lot. */
export interface GivenGoods {
  code: string;
  useBy?: string | null;
  quantity?: number;
  openedAt?: string;
  placeId?: string;
}

/** Fills a running service with products and goods through its API, and records what happens to them. */
export class StockedStudio {
  private makerId: string | undefined;
  private shelfId: string | undefined;

  constructor(readonly service: RunningService) {}

  /** The maker of everything here. */
  async maker(): Promise<string> {
    this.makerId ??= (await this.service.made<Made>('/makers', { name: `Halden Ink ${uuidv7()}` })).id;
    return this.makerId;
  }

  /** The place where everything arrives. */
  async shelf(): Promise<string> {
    this.shelfId ??= (
      await this.service.made<Made>('/places', { name: `Shelf ${uuidv7()}`, kind: 'shelf' })
    ).id;
    return this.shelfId;
  }

  async product(given: GivenProduct): Promise<string> {
    const { kind = 'pigment', ...fields } = given;
    const usual = {
      pigment: { volumeMicrolitres: 15_000, openedLife: 'P6M' },
      cartridge: { notation: '3RL' },
      consumable: {},
    }[kind];
    const makerId = await this.maker();
    const made = await this.service.made<Made>('/products', { kind, makerId, ...usual, ...fields });
    return made.id;
  }

  /** Receives goods of one lot and answers with its lot, containers and holds. */
  async receive(productId: string, goods: GivenGoods): Promise<ReceivedLineView> {
    const { code, useBy = '2099-12-31', quantity = 1, openedAt, placeId } = goods;
    const line = {
      productId,
      codes: [{ kind: 'lot', code }],
      useBy,
      quantity,
      placeId: placeId ?? (await this.shelf()),
      ...(openedAt === undefined ? {} : { openedAt }),
    };
    const receipt = await this.service.made<ReceiptView>('/deliveries', {
      origin: openedAt === undefined ? 'gift or sample' : 'opening stock',
      lines: [line],
    });
    const [received] = receipt.lines;
    if (!received) throw new Error('The delivery has no line.');
    return received;
  }

  /** Receives one bottle or box and answers with its container id. */
  async receiveOne(productId: string, goods: GivenGoods): Promise<string> {
    const { containers } = await this.receive(productId, goods);
    const [container] = containers;
    if (!container) throw new Error('Nothing was received.');
    return container.id;
  }

  /** Records something of a container, such as `open` or `discard`. */
  record(containerId: string, operation: string, body: object = {}): Promise<ContainerChangeView> {
    return this.service.made<ContainerChangeView>(`/containers/${containerId}/${operation}`, body);
  }
}

/** The instant so many days ago. */
export function daysAgo(days: number): string {
  return new Date(Date.now() - days * 86_400_000).toISOString();
}

/** The day so many days ahead, in UTC, YYYY-MM-DD. */
export function dayAhead(days: number): string {
  return new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
}
