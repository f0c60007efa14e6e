import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import { ConfigurationPools } from '../catalogue/configuration-pools.service.js';
import { ProductRegister } from '../catalogue/product-register.service.js';
import { People } from '../identity/people.service.js';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound, staleVersion } from '../platform/problem.js';
import { type KitItem, KitList } from './kit-list.entity.js';
import { kitListFault } from './kit-list-fault.js';
import type { KitItemDto, PutKitListDto } from './kit-lists.dto.js';
import type { KitItemView, KitListView } from './kit-lists.views.js';
import { Procedure } from './procedure.entity.js';
import { Procedures } from './procedures.service.js';
import { ProspectJudge } from './prospects/prospect-judge.service.js';

/** What a procedure normally needs on the tray; an artist's own list stands before the procedure's. */
@Injectable()
export class KitLists {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly people: People,
    private readonly procedures: Procedures,
    private readonly register: ProductRegister,
    private readonly configurationPools: ConfigurationPools,
    private readonly prospects: ProspectJudge,
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
        await this.people.require(transaction, artistId === null ? [] : [artistId]);
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
        await this.prospects.mark(transaction);
        return {
          procedureId,
          artistId,
          items: items.map((item) => ({ ...item, productName: null })),
          version,
        };
      },
    );
  }

  private async checkedItems(transaction: Transaction, given: KitItemDto[]): Promise<KitItem[]> {
    const items = given.map(
      ({ productId = null, configuration = null, quantity }): KitItem => ({
        productId,
        configuration,
        quantity,
      }),
    );
    const fault = kitListFault(items);
    if (fault) throw invalidField(`items.${fault.index}`, fault.message);
    const productIds = items.flatMap((item) => item.productId ?? []);
    const known = await this.register.labels(transaction.read, transaction.actor.chainId, productIds);
    const unknown = productIds.find((id) => !known.has(id));
    if (unknown !== undefined) throw notFound('product', unknown);
    await this.refuseUnknownConfigurations(transaction, items);
    return items;
  }

  private async refuseUnknownConfigurations(transaction: Transaction, items: KitItem[]): Promise<void> {
    if (items.every((item) => item.configuration === null)) return;
    const pools = await this.configurationPools.load(transaction.read, transaction.actor.chainId);
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
    const labels = await this.register.labels(this.database.read, actor.chainId, ids);
    return items.map((item) => ({
      ...item,
      productName: item.productId === null ? null : (labels.get(item.productId) ?? null),
    }));
  }
}
