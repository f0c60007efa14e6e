import { Injectable } from '@nestjs/common';
import { In, IsNull } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import { ConfigurationPools } from '../catalogue/configuration-pools.service.js';
import { Product } from '../catalogue/product.entity.js';
import { Person } from '../identity/person.entity.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound, staleVersion } from '../platform/problem.js';
import { type KitItem, KitList } from './kit-list.entity.js';
import type { KitItemDto, PutKitListDto } from './kit-lists.dto.js';
import type { KitItemView, KitListView } from './kit-lists.views.js';
import { Procedure } from './procedure.entity.js';
import { Procedures } from './procedures.service.js';

/** What a procedure normally needs on the tray; an artist's own list stands before the procedure's. */
@Injectable()
export class KitLists {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly procedures: Procedures,
    private readonly configurationPools: ConfigurationPools,
  ) {}

  /** The artist's own list, else the procedure's, else an empty one without a version. */
  async show(actor: Actor, procedureId: string, artistId: string | null): Promise<KitListView> {
    const { studioId } = actor;
    const { manager } = this.database.reader;
    const procedure = await manager.findOneBy(Procedure, { studioId, id: procedureId });
    if (!procedure) throw notFound('procedure', procedureId);
    const lists = await manager.find(KitList, {
      where: [
        { studioId, procedureId, artistId: IsNull() },
        ...(artistId === null ? [] : [{ studioId, procedureId, artistId }]),
      ],
    });
    const list = lists.find((one) => one.artistId !== null) ?? lists[0];
    return {
      procedureId,
      artistId: list?.artistId ?? null,
      items: await this.itemViews(actor, list?.items ?? []),
      version: list?.version ?? null,
    };
  }

  /** Makes a list or replaces it whole. */
  async put(actor: Actor, procedureId: string, dto: PutKitListDto): Promise<KitListView> {
    const { studioId } = actor;
    const artistId = dto.artistId ?? null;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'sessions.put-kit-list',
        subject: { kind: 'procedure', id: procedureId },
        content: { procedureId, ...dto },
      },
      async (transaction) => {
        await this.procedures.find(transaction, procedureId);
        if (artistId !== null) await this.refuseUnknownArtist(transaction, artistId);
        const items = await this.checkedItems(transaction, dto.items);
        const present = await transaction.manager.findOneBy(KitList, {
          studioId,
          procedureId,
          artistId: artistId ?? IsNull(),
        });
        const updatedAt = transaction.recordedAt;
        if (present && dto.version === undefined) throw staleVersion('kit list', present.version);
        if (!present && dto.version !== undefined) {
          throw invalidField(
            'version',
            `Version ${dto.version} was given, but there is no kit list yet. Leave version out to make one.`,
          );
        }
        let version = 1;
        if (present && dto.version !== undefined) {
          const key = { studioId, id: present.id };
          const changed = await transaction.change(KitList, 'kit list', key, dto.version, {
            items,
            updatedAt,
          });
          version = changed.version;
        } else {
          const id = uuidv7();
          await transaction.insert(KitList, {
            studioId,
            id,
            procedureId,
            artistId,
            items,
            version,
            updatedAt,
          });
        }
        transaction.note({ artistId });
        return {
          procedureId,
          artistId,
          items: items.map((item) => ({ ...item, productName: null })),
          version,
        };
      },
    );
  }

  private async refuseUnknownArtist(transaction: Transaction, artistId: string): Promise<void> {
    const { studioId } = transaction;
    const artist = await transaction.manager.findOneBy(Person, { studioId, id: artistId });
    if (!artist) throw notFound('person', artistId);
  }

  private async checkedItems(transaction: Transaction, given: KitItemDto[]): Promise<KitItem[]> {
    const items = given.map(({ productId = null, configuration = null, quantity }, index): KitItem => {
      if ((productId === null) === (configuration === null)) {
        throw invalidField(
          `items.${index}`,
          `Line ${index + 1} names ${productId === null ? 'neither a product nor a configuration' : 'both a product and a configuration'}. Name exactly one.`,
        );
      }
      return { productId, configuration, quantity };
    });
    const named = (item: KitItem) => item.productId ?? item.configuration;
    const twice = items.findIndex(
      (item, index) => items.findIndex((one) => named(one) === named(item)) < index,
    );
    if (twice >= 0) {
      throw invalidField(
        `items.${twice}`,
        `Line ${twice + 1} names what an earlier line names. Put it on one line with the whole quantity.`,
      );
    }
    const products = await productsOf(transaction, items);
    const strange = items.findIndex((item) => item.productId !== null && !products.has(item.productId));
    if (strange >= 0) {
      throw invalidField(
        `items.${strange}.productId`,
        `The register has no product with the id ${items[strange]?.productId}. Choose one from the catalogue.`,
      );
    }
    await this.refuseUnknownConfigurations(transaction, items);
    return items;
  }

  private async refuseUnknownConfigurations(transaction: Transaction, items: KitItem[]): Promise<void> {
    if (items.every((item) => item.configuration === null)) return;
    const pools = await this.configurationPools.load(
      transaction.query.bind(transaction),
      transaction.actor.chainId,
    );
    const known = new Set(pools.flatMap((pool) => pool.poolKeys));
    const strange = items.findIndex((item) => item.configuration !== null && !known.has(item.configuration));
    if (strange < 0) return;
    throw invalidField(
      `items.${strange}.configuration`,
      `No cartridge of the register has the configuration "${items[strange]?.configuration}". Take a key from the list of configurations, or name a product.`,
    );
  }

  private async itemViews(actor: Actor, items: KitItem[]): Promise<KitItemView[]> {
    const ids = items.flatMap((item) => item.productId ?? []);
    const products =
      ids.length === 0
        ? []
        : await this.database.reader.manager.find(Product, {
            where: { chainId: actor.chainId, id: In(ids) },
          });
    const names = new Map(
      products.map(({ id, name, shade }) => [id, shade === null ? name : `${name} ${shade}`] as const),
    );
    return items.map((item) => ({
      ...item,
      productName: item.productId === null ? null : (names.get(item.productId) ?? null),
    }));
  }
}

async function productsOf(transaction: Transaction, items: KitItem[]): Promise<Set<string>> {
  const ids = items.flatMap((item) => item.productId ?? []);
  if (ids.length === 0) return new Set();
  const rows = await transaction.query<{ id: string }>(
    `SELECT id FROM product WHERE chain_id = $1 AND id IN (${ids.map((_, index) => `$${index + 2}`).join(', ')})`,
    [transaction.actor.chainId, ...ids],
  );
  return new Set(rows.map((row) => row.id));
}
