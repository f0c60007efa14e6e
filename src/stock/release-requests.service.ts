import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import { localDay } from '../identity/local-day.js';
import { roleMay, roles } from '../identity/permissions.js';
import type { Actor } from '../platform/actor.js';
import { placeholders, type Read } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { occurredAt } from '../platform/occurred-at.js';
import { notFound, Problem } from '../platform/problem.js';
import { Hold, HoldRelease } from './hold.entity.js';
import { HoldReleaseRequest } from './hold-release-request.entity.js';
import type { AskReleaseDto } from './holds.dto.js';
import type { HoldView, ReleaseRequestView } from './holds.views.js';
import { Photos } from './photos/photos.service.js';
import { admitRelease } from './release-admission.js';

/** What a release by two goes by. */
export interface AdmittedRelease {
  request: ReleaseRequestView | null;
  seenBy: HoldView['releaseSeenBy'];
}

const releasers = roles.filter((role) => roleMay(role, 'release holds'));

/** Releases of recall holds are asked for by one person and carried out by another. */
@Injectable()
export class ReleaseRequests {
  constructor(
    private readonly transactions: Transactions,
    private readonly photos: Photos,
  ) {}

  /** @throws Problem not-found; wrong-state when the hold needs no second person, or is released already */
  ask(actor: Actor, holdId: string, dto: AskReleaseDto): Promise<HoldView> {
    const { studioId, personId, via } = actor;
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'stock.ask-release',
        subject: { kind: 'hold', id: holdId },
        content: { ...dto, holdId },
      },
      async (transaction) => {
        const hold = await transaction.manager.findOneBy(Hold, { studioId, id: holdId });
        if (!hold) throw notFound('hold', holdId);
        if (hold.kind !== 'recall') {
          throw new Problem(
            409,
            'wrong-state',
            'Only what is recalled needs a second person to be released. Release this hold itself, with the reason.',
          );
        }
        const released = await transaction.manager.findOneBy(HoldRelease, { studioId, holdId });
        if (released) {
          throw new Problem(409, 'wrong-state', `This hold was released already, at ${released.recordedAt}.`);
        }
        await this.photos.check(transaction.read, studioId, dto.photoId);
        const { recordedAt } = transaction;
        const request: HoldReleaseRequest = {
          ...{ studioId, id: dto.id, holdId, recordedAt, personId, via },
          reason: dto.reason,
          photoId: dto.photoId ?? null,
          occurredAt: occurredAt(dto.occurredAt, recordedAt),
        };
        await transaction.insert(HoldReleaseRequest, request);
        return {
          id: hold.id,
          kind: hold.kind,
          lotId: hold.lotId,
          containerId: hold.containerId,
          reason: hold.reason,
          occurredAt: hold.occurredAt,
          releasedAt: null,
          releaseRequest: viewOf(request),
          releaseSeenBy: null,
        };
      },
    );
  }

  /** Asks for the release of many holds in the caller's transaction; another person then releases each. */
  async askMany(
    transaction: Transaction,
    holdIds: readonly string[],
    { reason, occurredAt: at }: Pick<HoldReleaseRequest, 'reason' | 'occurredAt'>,
  ): Promise<void> {
    if (holdIds.length === 0) return;
    const { studioId, recordedAt, actor } = transaction;
    const { personId, via } = actor;
    await transaction.insert(
      HoldReleaseRequest,
      holdIds.map((holdId) => ({
        ...{ studioId, id: uuidv7(), holdId, recordedAt, personId, via },
        ...{ reason, photoId: null, occurredAt: at },
      })),
    );
  }

  /**
   * Whether the actor may release a hold now, and by which request. Called under the lock of its lot.
   * @throws Problem second-person-needed when a second person, or a photo, is missing
   */
  async admit(
    { actor, read, recordedAt }: Transaction,
    hold: Pick<Hold, 'id' | 'kind'>,
  ): Promise<AdmittedRelease> {
    if (hold.kind !== 'recall') return { request: null, seenBy: null };
    const requests = (await this.latestFirst(read, actor.studioId, [hold.id])).map((request) => ({
      ...request,
      hasPhoto: request.photoId !== null,
    }));
    const others = await countOfOthers(read, actor, recordedAt);
    const admission = admitRelease({ kind: hold.kind, personId: actor.personId, requests, others });
    if (!admission.allowed) throw new Problem(409, 'second-person-needed', admission.message);
    return { request: admission.request && viewOf(admission.request), seenBy: admission.seenBy };
  }

  /** The latest request of each hold, by its id. */
  async latest(
    read: Read,
    studioId: string,
    holdIds: readonly string[],
  ): Promise<Map<string, ReleaseRequestView>> {
    const requests = await this.latestFirst(read, studioId, holdIds);
    return new Map(requests.reverse().map((request) => [request.holdId, viewOf(request)]));
  }

  private async latestFirst(
    read: Read,
    studioId: string,
    holdIds: readonly string[],
  ): Promise<(ReleaseRequestView & { holdId: string })[]> {
    if (holdIds.length === 0) return [];
    return read(
      `SELECT id, hold_id AS "holdId", person_id AS "personId", reason, photo_id AS "photoId",
         occurred_at AS "occurredAt"
       FROM hold_release_request WHERE studio_id = $1 AND hold_id IN (${placeholders(holdIds)})
       ORDER BY recorded_at DESC, id DESC`,
      [studioId, ...holdIds],
    );
  }
}

/** People besides the actor who may release holds and can sign in to do so. */
async function countOfOthers(read: Read, actor: Actor, now: string): Promise<number> {
  const [row] = await read<{ others: number }>(
    `SELECT count(*) AS others FROM person
     WHERE studio_id = $1 AND state = 'active' AND account_id IS NOT NULL AND id <> $2
       AND (until IS NULL OR until >= $3) AND role IN (${placeholders(releasers, 4)})`,
    [actor.studioId, actor.personId ?? '', localDay(now, actor.timeZone), ...releasers],
  );
  return Number(row?.others ?? 0);
}

function viewOf({ id, personId, reason, photoId, occurredAt }: ReleaseRequestView): ReleaseRequestView {
  return { id, personId, reason, photoId, occurredAt };
}
