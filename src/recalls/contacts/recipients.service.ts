import { Injectable } from '@nestjs/common';
import { sealedAsContact } from '../../clients/sealing-contexts.js';
import { ShownClients } from '../../clients/shown-clients.service.js';
import type { StudioActor } from '../../identity/actor.guard.js';
import type { Actor } from '../../platform/actor.js';
import { Database, type Read } from '../../platform/database/database.js';
import { grouped } from '../../platform/grouped.js';
import { defaultPageSize, pageOf } from '../../platform/page.js';
import { invalidField } from '../../platform/problem.js';
import type { Certainty } from '../exposures/exposure-certainty.js';
import { Exposures } from '../exposures/exposures.service.js';
import { RecallRegister } from '../recall-register.service.js';
import { type ContactAudience, contactAudiences } from '../vocabulary.js';
import { Attempts, type AttemptsOfRecall, companyKey } from './attempts.service.js';
import { contactStanding, type StandingOfRecipient } from './contact-standing.js';
import type { RecipientPageDto } from './contacts.dto.js';
import type { RecipientPageView, RecipientView } from './contacts.views.js';
import { isOutstanding, type TellTotals, tellTotals } from './tell-totals.js';
import { TouchedPeople } from './touched-people.service.js';

/** Somebody to be told. */
interface ToTell {
  id: string;
  clientId: string | null;
  artistId: string | null;
  company: string | null;
  certainty: Certainty | null;
  erased: boolean;
}

export type Recipient = ToTell & StandingOfRecipient;

const nobody = { clientId: null, artistId: null, company: null, certainty: null, erased: false };

/**
 * Who is to be told of a recall: clients whom its lots touched or may have, artists who used or have them, who delivered
 * them, and the authorities the studio told. Guarantee: nobody is left out, whatever a page shows.
 */
@Injectable()
export class Recipients {
  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly exposures: Exposures,
    private readonly touched: TouchedPeople,
    private readonly attempts: Attempts,
    private readonly shownClients: ShownClients,
  ) {}

  /** How it stands with all of them, audience by audience. Works inside a transaction and outside. */
  async totals(read: Read, studioId: string, recallId: string): Promise<Record<ContactAudience, TellTotals>> {
    const attempts = await this.attempts.of(read, studioId, recallId);
    const totals: Partial<Record<ContactAudience, TellTotals>> = {};
    for (const audience of contactAudiences) {
      totals[audience] = tellTotals(await this.of(read, studioId, recallId, audience, attempts));
    }
    return totals as Record<ContactAudience, TellTotals>;
  }

  /** Everybody of one audience. Works inside a transaction and outside. */
  async everybody(
    read: Read,
    studioId: string,
    recallId: string,
    audience: ContactAudience,
  ): Promise<Recipient[]> {
    return this.of(read, studioId, recallId, audience, await this.attempts.of(read, studioId, recallId));
  }

  /** @throws Problem not-found; invalid-fields when `after` is nobody of them */
  async list(
    actor: StudioActor,
    recallId: string,
    { audience = 'client', outstanding, limit = defaultPageSize, after }: RecipientPageDto,
  ): Promise<RecipientPageView> {
    const { read } = this.database;
    const { studioId } = actor;
    await this.register.find(read, studioId, recallId);
    const attempts = await this.attempts.of(read, studioId, recallId);
    const all = await this.of(read, studioId, recallId, audience, attempts);
    const rest = after === undefined ? all : all.slice(placeAfter(all, after));
    // Whoever was told since the page before is still a place to go on from.
    const wanted = outstanding ? rest.filter(isOutstanding) : rest;
    const { shown, next } = pageOf(wanted, limit, ({ id }) => id);
    return { totals: tellTotals(all), items: await this.views(seeingClients(actor), audience, shown), next };
  }

  private async of(
    read: Read,
    studioId: string,
    recallId: string,
    audience: ContactAudience,
    attempts: AttemptsOfRecall,
  ): Promise<Recipient[]> {
    const since =
      audience === 'client' ? await this.attempts.concernedSince(read, studioId, recallId) : new Map();
    const toTell = await this.toTell(read, studioId, recallId, audience, attempts);
    return toTell.map((one) => {
      const key = one.clientId ?? one.artistId ?? companyKey(one.company ?? '');
      return { ...one, ...contactStanding(attempts.of(audience, key), since.get(key) ?? null) };
    });
  }

  private async toTell(
    read: Read,
    studioId: string,
    recallId: string,
    audience: ContactAudience,
    attempts: AttemptsOfRecall,
  ): Promise<ToTell[]> {
    switch (audience) {
      case 'client':
        return (await this.exposures.clients(read, studioId, recallId)).map(
          ({ clientId, certainty, erasedAt }) => ({
            ...{ ...nobody, id: clientId, clientId, certainty },
            erased: erasedAt !== null,
          }),
        );
      case 'artist': {
        const lots = await this.touched.artists(read, studioId, recallId);
        return [...grouped(lots, ({ artistId }) => artistId)]
          .map(([artistId, own]) => ({ ...nobody, id: artistId, artistId, certainty: most(own) }))
          .sort(byId);
      }
      case 'supplier': {
        const lots = await this.touched.suppliers(read, studioId, recallId);
        const suppliers = [...grouped(lots, ({ supplierId }) => supplierId)].map(([id, own]) => ({
          ...{ ...nobody, id, certainty: most(own) },
          company: own[0]?.company ?? null,
        }));
        const known = new Set(suppliers.map(({ company }) => companyKey(company ?? '')));
        return [
          ...suppliers,
          ...named('supplier', attempts).filter(({ company }) => !known.has(companyKey(company ?? ''))),
        ];
      }
      case 'authority':
        return named('authority', attempts);
    }
  }

  private async views(
    actor: Actor,
    audience: ContactAudience,
    shown: readonly Recipient[],
  ): Promise<RecipientView[]> {
    const clients = await this.shownClients.many(
      actor,
      shown.flatMap(({ clientId }) => clientId ?? []),
      'recall',
    );
    return shown.map(({ id, clientId, artistId, company, certainty, erased, ...standing }) => {
      const known = clientId === null ? undefined : clients.get(clientId);
      return {
        ...{ id, audience, clientId },
        clientReference: known?.client.reference ?? null,
        clientName: known ? this.shownClients.nameOf(known) : null,
        clientContact:
          known?.sealer?.open(known.client.contactSealed, sealedAsContact(known.client.id)) ?? null,
        ...{ erased, artistId, company, certainty },
        ...standing,
      };
    });
  }
}

/** Names are for whoever tells clients; others see the reference. */
function seeingClients(actor: StudioActor): Actor {
  return { ...actor, seesClients: actor.seesClients && actor.may.has('tell clients of recalls') };
}

function named(audience: ContactAudience, attempts: AttemptsOfRecall): ToTell[] {
  return attempts.companies(audience).map((company) => ({ ...nobody, ...company }));
}

function most(lots: readonly { certainty: Certainty }[]): Certainty {
  return lots.some(({ certainty }) => certainty === 'certain') ? 'certain' : 'possible';
}

const byId = (one: ToTell, other: ToTell) => (one.id < other.id ? -1 : 1);

function placeAfter(all: readonly Recipient[], after: string): number {
  const place = all.findIndex(({ id }) => id === after);
  if (place >= 0) return place + 1;
  throw invalidField(
    'after',
    `The recipient ${after} is not among those to be told, or not any more. Read them anew from the first page.`,
  );
}
