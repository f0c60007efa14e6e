import { Injectable } from '@nestjs/common';
import { productLabel } from '../../catalogue/product-label.js';
import { sealedAsContact } from '../../clients/sealing-contexts.js';
import { ShownClients } from '../../clients/shown-clients.service.js';
import { refuseWithout, type StudioActor } from '../../identity/actor.guard.js';
import { localDay } from '../../identity/local-day.js';
import { People } from '../../identity/people.service.js';
import type { Actor } from '../../platform/actor.js';
import { Database } from '../../platform/database/database.js';
import { faultsProblem, notFound } from '../../platform/problem.js';
import { maximumPageSize } from '../../platform/request.dto.js';
import { ExposedSessions } from '../exposures/exposed-sessions.service.js';
import type { Certainty } from '../exposures/exposure-certainty.js';
import { Exposures } from '../exposures/exposures.service.js';
import type { ExposedSessionView } from '../exposures/exposures.views.js';
import type { ClientExposure, MessageFacts, MessageLanguage } from '../messages/message-facts.js';
import { type MessageRemark, messageElements, preparedMessage } from '../messages/prepared-message.js';
import { RecallRegister } from '../recall-register.service.js';
import { readAddressee } from './addressee.js';
import { companyKey } from './attempts.service.js';
import type { PrepareMessageDto } from './contacts.dto.js';
import type { PreparedMessageView } from './contacts.views.js';
import { MessageSources } from './message-sources.service.js';
import { Recipients } from './recipients.service.js';
import { TouchedPeople } from './touched-people.service.js';

/** Whom a message is for, and what is known for it. */
interface Prepared {
  facts: MessageFacts;
  recipient: string | null;
  recipientContact: string | null;
  erased: boolean;
}

/**
 * Prepares messages about a recall, one recipient at a time. Nothing is sent: a person prints, copies or reads it out.
 * Guarantee: a message to a client names the lots of that client and no others.
 */
@Injectable()
export class RecallMessages {
  constructor(
    private readonly database: Database,
    private readonly register: RecallRegister,
    private readonly sources: MessageSources,
    private readonly exposures: Exposures,
    private readonly exposedSessions: ExposedSessions,
    private readonly touched: TouchedPeople,
    private readonly recipients: Recipients,
    private readonly shownClients: ShownClients,
    private readonly people: People,
  ) {}

  /** @throws Problem not-found also when the recipient is none of this recall */
  async prepare(actor: StudioActor, recallId: string, dto: PrepareMessageDto): Promise<PreparedMessageView> {
    const { audience = 'client', language = 'en' } = dto;
    const recall = await this.register.find(this.database.read, actor.studioId, recallId);
    if (audience === 'client') refuseWithout(actor, 'tell clients of recalls');
    const read = readAddressee({ ...dto, audience });
    if ('faults' in read) throw faultsProblem(read.faults);
    const { clientId, artistId, company } = read.addressee;
    const drill = recall.kind === 'drill';
    const prepared =
      clientId !== null
        ? await this.toClient(actor, recallId, clientId, language)
        : artistId !== null
          ? await this.toArtist(actor, recallId, artistId, language)
          : audience === 'supplier'
            ? await this.toSupplier(actor, recallId, company ?? '', language)
            : await this.toAuthority(actor, recallId, company ?? '', language);
    const { facts } = prepared;
    const { heading, body, remarks } = preparedMessage(facts);
    const photoIds = await this.sources.photos(
      actor.studioId,
      recallId,
      facts.lots.map(({ lotId }) => lotId),
    );
    return {
      ...{ audience, language, heading: heading.text, headingElements: heading.elements },
      recipient: prepared.recipient,
      recipientContact: prepared.recipientContact,
      body,
      elements: [...messageElements],
      lots: facts.lots.map((lot) => ({
        ...{ lotId: lot.lotId, label: productLabel(lot), code: lot.code, certainty: lot.certainty },
      })),
      photoIds,
      remarks: [...remarks, ...remarksBeside({ erased: prepared.erased, drill, photos: photoIds.length })],
      drill,
    };
  }

  private async toClient(
    actor: Actor,
    recallId: string,
    clientId: string,
    language: MessageLanguage,
  ): Promise<Prepared> {
    const known = await this.shownClients.one(actor, clientId, 'recall');
    const exposures = (await this.sessionsOf(actor, recallId, clientId)).flatMap(exposuresOf);
    if (exposures.length === 0) throw notFound('client whom this recall concerns', clientId);
    const certainties = certaintyByLot(exposures);
    return {
      facts: {
        audience: 'client',
        language,
        recall: await this.sources.recall(actor, recallId),
        lots: await this.sources.lots(actor.studioId, certainties),
        exposures,
      },
      recipient: this.shownClients.nameOf(known),
      recipientContact: known.sealer?.open(known.client.contactSealed, sealedAsContact(clientId)) ?? null,
      erased: known.client.erasedAt !== null,
    };
  }

  private async sessionsOf(actor: Actor, recallId: string, clientId: string): Promise<ExposedSessionView[]> {
    const sessions: ExposedSessionView[] = [];
    for (let after: string | undefined; ; ) {
      const page = await this.exposedSessions.page(actor, recallId, {
        clientId,
        limit: maximumPageSize,
        ...(after !== undefined && { after }),
      });
      sessions.push(...page.items);
      if (page.next === null) return sessions;
      after = page.next;
    }
  }

  private async toArtist(
    actor: Actor,
    recallId: string,
    artistId: string,
    language: MessageLanguage,
  ): Promise<Prepared> {
    const { studioId, timeZone } = actor;
    const lots = (await this.touched.artists(this.database.read, studioId, recallId)).filter(
      (lot) => lot.artistId === artistId,
    );
    if (lots.length === 0) throw notFound('artist whom this recall concerns', artistId);
    const day = (instant: string | null) => (instant === null ? null : localDay(instant, timeZone));
    return {
      facts: {
        audience: 'artist',
        language,
        recall: await this.sources.recall(actor, recallId),
        lots: await this.sources.lots(studioId, certaintyByLot(lots)),
        parts: lots.map(({ lotId, sessions, firstAt, lastAt, containers }) => ({
          ...{ lotId, sessions, containers },
          firstDay: day(firstAt),
          lastDay: day(lastAt),
        })),
      },
      recipient: (await this.people.namesOf(studioId, [artistId])).get(artistId) ?? null,
      recipientContact: null,
      erased: false,
    };
  }

  private async toSupplier(
    actor: Actor,
    recallId: string,
    company: string,
    language: MessageLanguage,
  ): Promise<Prepared> {
    const { studioId, timeZone } = actor;
    const deliveries = (await this.touched.suppliers(this.database.read, studioId, recallId)).filter(
      (one) => companyKey(one.company) === companyKey(company),
    );
    if (deliveries.length === 0) throw notFound('supplier of lots of this recall', company);
    return {
      facts: {
        audience: 'supplier',
        language,
        recall: await this.sources.recall(actor, recallId),
        lots: await this.sources.lots(studioId, certaintyByLot(deliveries)),
        deliveries: deliveries.map(({ lotId, occurredAt, reference, pieces }) => ({
          ...{ lotId, reference, pieces },
          day: localDay(occurredAt, timeZone),
        })),
      },
      recipient: company,
      recipientContact: null,
      erased: false,
    };
  }

  private async toAuthority(
    actor: Actor,
    recallId: string,
    company: string,
    language: MessageLanguage,
  ): Promise<Prepared> {
    const { studioId, timeZone } = actor;
    const { read } = this.database;
    const clients = await this.exposures.clients(read, studioId, recallId);
    const totals = await this.recipients.totals(read, studioId, recallId);
    const certain = clients.filter(({ certainty }) => certainty === 'certain').length;
    const first = clients
      .map(({ firstAt }) => firstAt)
      .sort()
      .at(0);
    const last = clients
      .map(({ lastAt }) => lastAt)
      .sort()
      .at(-1);
    return {
      facts: {
        audience: 'authority',
        language,
        recall: await this.sources.recall(actor, recallId),
        lots: await this.sources.lots(studioId, await this.sources.lotsOfRecall(studioId, recallId)),
        figures: {
          clientsCertain: certain,
          clientsPossible: clients.length - certain,
          clientsTold: totals.client.reached + totals.client.refused,
          firstDay: first === undefined ? null : localDay(first, timeZone),
          lastDay: last === undefined ? null : localDay(last, timeZone),
        },
      },
      recipient: company,
      recipientContact: null,
      erased: false,
    };
  }
}

/** One line a session and lot: of several uses of it there, the most certain. */
function exposuresOf(session: ExposedSessionView): ClientExposure[] {
  const { day, visitKind, bodyPlace } = session;
  const byLot = new Map<string, ClientExposure>();
  for (const use of session.uses) {
    for (const lot of use.lots) {
      const because = use.reasons.filter(
        (reason) => reason !== 'lot undecided' || lot.standing === 'undecided',
      );
      if (lot.standing === 'undecided' && !because.includes('lot undecided'))
        because.unshift('lot undecided');
      const known = byLot.get(lot.lotId);
      if (known && known.because.length <= because.length) continue;
      byLot.set(lot.lotId, {
        ...{ lotId: lot.lotId, day, visitKind, bodyPlace },
        through: lot.as === 'house blend' ? 'house blend' : use.mixId === null ? 'direct' : 'mix',
        certainty: because.length === 0 ? 'certain' : 'possible',
        because,
      });
    }
  }
  return [...byLot.values()];
}

/** A lot is recalled for certain unless it is undecided; that it was used may still be only possible. */
function certaintyByLot(
  facts: readonly { lotId: string; certainty: Certainty; because?: readonly string[] }[],
): Map<string, Certainty> {
  const byLot = new Map<string, Certainty>();
  for (const { lotId, certainty, because } of facts) {
    const undecided = because === undefined ? certainty === 'possible' : because.includes('lot undecided');
    byLot.set(lotId, undecided ? 'possible' : 'certain');
  }
  return byLot;
}

function remarksBeside({
  erased,
  drill,
  photos,
}: {
  erased: boolean;
  drill: boolean;
  photos: number;
}): MessageRemark[] {
  const remarks: MessageRemark[] = [];
  if (photos === 0) {
    remarks.push({
      code: 'no picture',
      text: 'No photo of these lots was taken for this recall. The law asks for a picture of the product: take one when a container is found, or put one beside the message.',
      words: [],
    });
  }
  if (erased) {
    remarks.push({
      code: 'erased',
      text: 'This client was erased: who they are and how they are reached is not known here any more.',
      words: [],
    });
  }
  if (drill) {
    remarks.push({
      code: 'drill',
      text: 'This is a drill. Read the message, and pass it on to nobody.',
      words: [],
    });
  }
  return remarks;
}
