import { Injectable, Logger, type OnApplicationBootstrap, type OnModuleInit } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { FoundedStudios } from '../identity/founded-studios.service.js';
import { type Actor, systemActor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { notFound, Problem } from '../platform/problem.js';
import { ProcessRole } from '../platform/process-role.js';
import { Place } from './place.entity.js';
import type { AddPlaceDto, ArchivePlaceDto } from './places.dto.js';
import type { PlaceView } from './places.views.js';

const maximumPlaces = 500;

const firstPlace = () => ({ id: uuidv7(), name: 'Shelf', kind: 'shelf' }) as const;

/** Where stock stands. Every studio has at least one place: one without gets a shelf at start. */
@Injectable()
export class Places implements OnModuleInit, OnApplicationBootstrap {
  private readonly logger = new Logger('places');

  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly founded: FoundedStudios,
    private readonly role: ProcessRole,
  ) {}

  onModuleInit(): void {
    this.founded.register(async (transaction) => {
      await this.insert(transaction, firstPlace());
    });
  }

  async onApplicationBootstrap(): Promise<void> {
    if (!this.role.serving) return;
    const studios = await this.database.read<{ id: string; chainId: string; timeZone: string }>(
      `SELECT studio.id, studio.chain_id AS "chainId", studio.time_zone AS "timeZone" FROM studio WHERE NOT EXISTS (
         SELECT 1 FROM place WHERE place.studio_id = studio.id) ORDER BY studio.id`,
    );
    for (const studio of studios) {
      const place = firstPlace();
      await this.transactions.write(
        systemActor(studio),
        { id: null, action: 'stock.add-place', subject: { kind: 'place', id: place.id }, content: null },
        (transaction) => this.insert(transaction, place),
      );
      this.logger.log(`The studio ${studio.id} got its first place, a shelf.`);
    }
  }

  async list(actor: Actor): Promise<PlaceView[]> {
    const places = await this.database.reader.manager.find(Place, {
      where: { studioId: actor.studioId },
      order: { createdAt: 'ASC', id: 'ASC' },
      take: maximumPlaces,
    });
    return places.map(viewOf);
  }

  async add(actor: Actor, dto: AddPlaceDto): Promise<PlaceView> {
    return this.transactions.write(
      actor,
      { id: dto.id, action: 'stock.add-place', subject: { kind: 'place', id: dto.id }, content: dto },
      async (transaction) => {
        // One change of the places at a time, so that two never take the same name or the last two places.
        await transaction.lockStudio();
        const [same] = await transaction.query<{ id: string; name: string }>(
          `SELECT id, name FROM place
           WHERE studio_id = $1 AND lower(name) = lower($2) AND archived_at IS NULL`,
          [actor.studioId, dto.name],
        );
        if (same) {
          throw new Problem(
            409,
            'already-exists',
            `There is already a place named "${same.name}". Use that one, or give another name.`,
            { existing: { kind: 'place', id: same.id } },
          );
        }
        return this.insert(transaction, dto);
      },
    );
  }

  /** Archives a place where nothing stands any more, unless it is the last one. */
  async archive(actor: Actor, placeId: string, dto: ArchivePlaceDto): Promise<PlaceView> {
    const { studioId } = actor;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.archive-place',
        subject: { kind: 'place', id: placeId },
        content: { placeId, ...dto },
      },
      async (transaction) => {
        await transaction.lockStudio();
        const place = await transaction.manager.findOneBy(Place, { studioId, id: placeId });
        if (!place) throw notFound('place', placeId);
        if (place.archivedAt !== null) {
          throw new Problem(409, 'wrong-state', 'This place is archived already; nothing was changed.');
        }
        const [standing] = await transaction.query<{ count: number }>(
          `SELECT count(*) AS count FROM container
           WHERE studio_id = $1 AND place_id = $2 AND state NOT IN ('finished', 'discarded')`,
          [studioId, placeId],
        );
        if (standing && standing.count > 0) {
          throw new Problem(
            409,
            'wrong-state',
            `Still ${standing.count} containers stand at "${place.name}". Move them elsewhere first.`,
          );
        }
        const [others] = await transaction.query<{ count: number }>(
          'SELECT count(*) AS count FROM place WHERE studio_id = $1 AND id <> $2 AND archived_at IS NULL',
          [studioId, placeId],
        );
        if (others?.count === 0) {
          throw new Problem(
            409,
            'wrong-state',
            'This is the last place; a studio keeps at least one. Add another first.',
          );
        }
        const archivedAt = transaction.recordedAt;
        await transaction.update(Place, { studioId, id: placeId }, { archivedAt });
        return viewOf({ ...place, archivedAt });
      },
    );
  }

  private async insert(
    transaction: Transaction,
    given: Pick<Place, 'id' | 'name' | 'kind'>,
  ): Promise<PlaceView> {
    const place: Place = {
      studioId: transaction.studioId,
      id: given.id,
      name: given.name,
      kind: given.kind,
      createdAt: transaction.recordedAt,
      archivedAt: null,
    };
    await transaction.insert(Place, place);
    return viewOf(place);
  }
}

function viewOf({ id, name, kind, archivedAt }: Place): PlaceView {
  return { id, name, kind, archived: archivedAt !== null };
}
