import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { v5 as uuidv5 } from 'uuid';
import type { Actor } from '../platform/actor.js';
import { Database } from '../platform/database/database.js';
import type { Transaction } from '../platform/database/transaction.js';
import { Transactions } from '../platform/database/transactions.js';
import { invalidField, notFound, Problem } from '../platform/problem.js';
import type { StudioActor } from './actor.guard.js';
import { readOpenedLife } from './opened-life-duration.js';
import { People } from './people.service.js';
import { Person } from './person.entity.js';
import { type RetentionSettings, retentionFault, retentionPolicy } from './retention-policy.js';
import { retentionPresets } from './retention-presets.js';
import type { Requester } from './sign-in/credentials.service.js';
import { Standings } from './sign-in/standings.service.js';
import { WaysToSignIn } from './sign-in/ways-to-sign-in.service.js';
import { Studio } from './studio.entity.js';
import { StudioChanges } from './studio-changes.service.js';
import { StudioFounding } from './studio-founding.service.js';
import type { AddStudioDto, ChangeStudioDto } from './studios.dto.js';
import type { AddedStudioView, RetentionPresetView, StudioView } from './studios.views.js';

/** The settings that conditions are judged by. */
const judgedBy = ['timeZone', 'useByNearDays', 'openedLifeEndingDays', 'assumedOpenedLife'] as const;

/** Old and new values of the settings that changed; of the name and the contact point only that they did. */
function differences(before: Studio, after: Studio): object[] {
  const settings = [
    ...judgedBy,
    'name',
    'currency',
    'morning',
    'houseBlends',
    'passkeysRequired',
    'retentionPreset',
    'retentionYears',
    'retentionLaw',
    'contactPoint',
  ] as const;
  return settings
    .filter((field) => before[field] !== after[field])
    .map((field) =>
      field === 'name' || field === 'contactPoint'
        ? { field }
        : { field, from: before[field], to: after[field] },
    );
}

function viewOf(studio: Studio): StudioView {
  const { chainId: _, createdAt: __, passkeysRequired, ...view } = studio;
  return {
    ...view,
    passkeysRequired: passkeysRequired !== null,
    retention: retentionPolicy(retentionOf(studio)),
  };
}

const retentionOf = ({ retentionPreset, retentionYears, retentionLaw }: Studio): RetentionSettings => ({
  preset: retentionPreset,
  years: retentionYears,
  law: retentionLaw,
});

/**
 * The three settings of retention belong together: a preset chosen anew starts without the years and the law that stood
 * beside the one before.
 * @throws Problem invalid-fields
 */
function retentionChanges(before: Studio, dto: ChangeStudioDto): Partial<Studio> {
  const { retentionPreset: preset, retentionYears: years, retentionLaw: law } = dto;
  if (preset === undefined && years === undefined && law === undefined) return {};
  const chosenAnew = preset !== undefined && preset !== before.retentionPreset;
  const earlier = chosenAnew ? { preset, years: null, law: null } : retentionOf(before);
  const settings: RetentionSettings = {
    preset: earlier.preset,
    years: years === undefined ? earlier.years : years,
    law: law === undefined ? earlier.law : law,
  };
  const fault = retentionFault(settings);
  if (fault !== null) throw invalidField(fault.field, `${fault.field} ${fault.message}.`);
  return {
    retentionPreset: settings.preset,
    retentionYears: settings.years,
    retentionLaw: settings.law,
  };
}

/** The studios kept here and their settings. */
@Injectable()
export class Studios {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly changes: StudioChanges,
    private readonly standings: Standings,
    private readonly founding: StudioFounding,
    private readonly people: People,
    private readonly ways: WaysToSignIn,
  ) {}

  /** The studios in which the requester has a part, and may see it. */
  async list(requester: Requester): Promise<StudioView[]> {
    const standings = (await this.standings.of(requester)).filter(({ may }) => may.has('see the studio'));
    const studios = await this.database.reader.manager.find(Studio, {
      where: { id: In(standings.map(({ studioId }) => studioId)) },
      order: { createdAt: 'ASC', id: 'ASC' },
    });
    return studios.map(viewOf);
  }

  async get(studioId: string): Promise<Studio> {
    const studio = await this.database.reader.manager.findOneBy(Studio, { id: studioId });
    if (!studio) throw notFound('studio', studioId);
    return studio;
  }

  async show(actor: Actor): Promise<StudioView> {
    return viewOf(await this.get(actor.studioId));
  }

  retentionPresets(): RetentionPresetView[] {
    return [...retentionPresets];
  }

  async change(actor: Actor, dto: ChangeStudioDto): Promise<StudioView> {
    const { id, version, passkeysRequired, ...settings } = dto;
    const changes: Partial<Studio> = settings;
    if (passkeysRequired !== undefined) changes.passkeysRequired = passkeysRequired ? 1 : null;
    const life = dto.assumedOpenedLife == null ? null : readOpenedLife(dto.assumedOpenedLife);
    if (life !== null && 'error' in life) throw invalidField('assumedOpenedLife', life.error.message);
    return this.transactions.write(
      actor,
      {
        id,
        action: 'identity.change-studio',
        subject: { kind: 'studio', id: actor.studioId },
        content: dto,
      },
      async (transaction) => {
        if (passkeysRequired) await this.refuseWithoutOwnPasskey(transaction, actor);
        const before = await transaction.manager.findOneByOrFail(Studio, { id: actor.studioId });
        const studio = await transaction.change(Studio, 'studio', { id: actor.studioId }, version, {
          ...changes,
          ...retentionChanges(before, dto),
        });
        transaction.note({ changes: differences(before, studio) });
        if (judgedBy.some((setting) => before[setting] !== studio[setting])) {
          await this.changes.follow(transaction);
        }
        return viewOf(studio);
      },
    );
  }

  /** Who asks everybody for a passkey would else be the first to be locked out. */
  private async refuseWithoutOwnPasskey(
    { manager, read }: Transaction,
    { studioId, personId }: Actor,
  ): Promise<void> {
    const person = await manager.findOneBy(Person, { studioId, id: personId ?? '' });
    if (person?.accountId != null && (await this.ways.hasPasskey(person.accountId, read))) return;
    throw new Problem(
      409,
      'wrong-state',
      'You have no passkey yourself, so you could not come in any more. Add one in your account first.',
    );
  }

  /**
   * Adds a studio to the actor's chain: the product register is the chain's; stock, sessions and clients are its own. An
   * owner owns it too; a chain manager leads it, and names its owner, who is invited afterwards. Recorded in both studios.
   */
  async add(actor: StudioActor, dto: AddStudioDto): Promise<AddedStudioView> {
    const me = await this.database.reader.manager.findOneByOrFail(Person, {
      studioId: actor.studioId,
      id: actor.personId,
    });
    if (me.accountId === null) {
      throw new Problem(
        409,
        'wrong-state',
        'Only who signs in can add a studio. Accept your invitation first.',
      );
    }
    const name = (await this.people.namesOf(actor.studioId, [me.id])).get(me.id) ?? '';
    const myself = { name, accountId: me.accountId };
    if (me.role !== 'owner' && dto.ownerName === undefined) {
      throw invalidField('ownerName', 'A studio has an owner: name them, and invite them afterwards');
    }
    // Made of the request's, so that a repeated request finds it, and that nobody learns by trying ids which studios there are.
    const studioId = uuidv5(dto.id, actor.studioId);
    // Founded by an earlier attempt, or refused below for an id that stands for another request.
    const known = await this.database.read(
      `SELECT id FROM studio WHERE id = $1
       UNION ALL SELECT id FROM accepted_request WHERE studio_id = $2 AND id = $3`,
      [studioId, actor.studioId, dto.id],
    );
    if (known.length === 0) {
      await this.founding.found({
        id: studioId,
        chainId: actor.chainId,
        name: dto.name,
        timeZone: dto.timeZone,
        houseBlends: 'off',
        ...(me.role === 'owner'
          ? { owner: myself }
          : { owner: { name: dto.ownerName ?? '', accountId: null }, chainManager: myself }),
      });
    }
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: 'identity.add-studio',
        subject: { kind: 'studio', id: studioId },
        content: dto,
      },
      async () => ({ studioId }),
    );
  }
}
