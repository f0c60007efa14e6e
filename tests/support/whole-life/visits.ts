import { stringify } from 'csv-stringify/sync';
import type { AlertPageView } from '../../../src/alerts/alerts.views.js';
import type { WrittenClientView } from '../../../src/clients/clients.views.js';
import type { CompletionView } from '../../../src/sessions/completion.views.js';
import type { RecordedUsesView } from '../../../src/sessions/late-records.views.js';
import type { MixView } from '../../../src/sessions/mixes.views.js';
import type { ProcedureView } from '../../../src/sessions/procedures.views.js';
import type { WrittenSessionView } from '../../../src/sessions/sessions.views.js';
import type { ScanView, TrayView } from '../../../src/sessions/tray.views.js';
import type { LivedPeople } from './access.js';
import type { RecordingService } from './recording-service.js';
import type { LivedRegister } from './register.js';
import type { LivedStock } from './stock.js';
import type { Texts } from './texts.js';

const minutes = (count: number) => new Date(Date.now() + count * 60_000).toISOString();
const daysAgo = (days: number) => minutes(-days * 1_440);

/** Everything a visit is made of. */
class Visits {
  constructor(
    readonly service: RecordingService,
    readonly texts: Texts,
    readonly people: LivedPeople,
    readonly register: LivedRegister,
    readonly stock: LivedStock,
    readonly procedureId: string,
    readonly clientId: string,
  ) {}

  private get whoAndWhat() {
    const { clientId, procedureId, people } = this;
    return { clientId, artistId: people.artistId, procedureId };
  }

  plan(more: object = {}): Promise<WrittenSessionView> {
    return this.service.made<WrittenSessionView>('/sessions', {
      ...this.whoAndWhat,
      visitKind: 'first session',
      bodyPlace: 'brows',
      bodyPlaceDetail: this.texts.ofClient('detail planned'),
      bookedAt: daysAgo(3),
      plannedStart: minutes(60),
      ...more,
    });
  }

  /** Planned, changed, set up, and left with a tray, a mix and nothing settled. */
  async leaveOpen(followsSessionId: string): Promise<void> {
    const { service, texts, people, stock, register } = this;
    const planned = await this.plan({ visitKind: 'touch-up', followsSessionId });
    await service.changed('PATCH', `/sessions/${planned.id}`, {
      version: planned.version,
      artistId: people.artistId,
      procedureId: this.procedureId,
      bodyPlaceDetail: texts.ofClient('detail changed'),
      plannedStart: minutes(90),
      bookedAt: daysAgo(2),
      followsSessionId,
    });
    const at = `/sessions/${planned.id}`;
    await service.made(`${at}/setup`);
    const scan = (body: object) => service.made<ScanView>(`${at}/scans`, body);
    await scan({ symbol: stock.umber.labelCode });
    await scan({ containerId: stock.sand.containerId });
    await scan({ lotId: stock.liners.lotId });
    await scan({ productId: register.gelId });
    await scan({ symbol: texts('sand lot') });
    const liner = await scan({ symbol: stock.liners.labelCode, another: true });
    const { lines } = await service.seen<TrayView>(`${at}/tray`);
    const taken = liner.trayLineId ?? lines.at(-1)?.id;
    await service.made(`${at}/tray/${taken}/take-off`, { outcome: 'back unopened' });
    await this.mix(at);
  }

  /** @returns the id of a mix with three drops in it */
  async mix(at: string): Promise<string> {
    const mix = await this.service.made<MixView>(`${at}/mixes`, { label: this.texts('mix') });
    await this.service.made(`${at}/mixes/${mix.id}/components`, {
      containerId: this.stock.umber.containerId,
      drops: 3,
    });
    return mix.id;
  }

  /** Somebody new who walked in, treated and signed off. */
  async complete(): Promise<void> {
    const { service, texts, people, register, stock } = this;
    const { id } = await service.made<WrittenSessionView>('/sessions/walk-in', {
      client: this.newClient('walk-in'),
      artistId: people.artistId,
      procedureId: this.procedureId,
      visitKind: 'first session',
      bodyPlaceDetail: texts.ofClient('detail walk-in'),
    });
    const at = `/sessions/${id}`;
    await service.made(`${at}/scans`, { symbol: stock.umber.labelCode });
    const liner = await service.made<ScanView>(`${at}/scans`, { symbol: stock.liners.labelCode });
    const gel = await service.made<ScanView>(`${at}/scans`, { containerId: stock.gel.containerId });
    const mixId = await this.mix(at);
    const put = { appliedAt: minutes(-0.01), removedAt: minutes(0), appliedBy: people.artistId };
    const completed = await service.made<CompletionView>(`${at}/completion`, {
      lines: [
        { trayLineId: liner.trayLineId, outcome: 'used', reason: texts.ofClient('why used') },
        { trayLineId: gel.trayLineId, outcome: 'used', ...put },
      ],
      besides: [
        { containerId: stock.otherGel.containerId, ...put, reason: texts.ofClient('why besides') },
        { containerId: stock.blend.containerId, drops: 2 },
      ],
      complications: texts.ofClient('complications'),
      signedBy: people.artistId,
    });
    await service.made(`${at}/uses`, {
      uses: [
        { lotId: stock.liners.lotId, knownBy: 'own label', reason: texts.ofClient('why added') },
        { containerId: stock.sand.containerId, mixId, knownBy: 'own label', drops: 1 },
        { productId: register.gelId, codeState: 'unreadable', knownBy: 'typed', appliedBy: people.artistId },
        { productId: register.umberId, code: texts('noted lot'), knownBy: 'typed', drops: 1 },
      ],
    });
    await service.made(`${at}/uses/${completed.uses[0]?.id}/reversal`, {
      reason: texts.ofClient('why reversed'),
    });
    const { version } = await service.seen<{ version: number }>(at);
    await service.made(`${at}/complications`, { version, complications: texts.ofClient('noticed later') });
  }

  newClient(what: string) {
    const { texts } = this;
    return {
      name: texts.ofClient(what),
      contact: texts.ofClient(`${what} phone`),
      note: texts.ofClient(`${what} note`),
    };
  }

  /** Visits that were written on paper: of someone who was not known, and a touch-up, whose id is returned. */
  async recordLate(followsSessionId: string): Promise<string> {
    const { service, texts, people, register, stock } = this;
    const late = (more: object) =>
      service.made<RecordedUsesView>('/sessions/late', {
        source: 'paper',
        occurredAt: daysAgo(40),
        artistId: people.artistId,
        procedureId: this.procedureId,
        visitKind: 'first session',
        bodyPlaceDetail: texts.ofClient('detail late'),
        complications: texts.ofClient('late trouble'),
        signedBy: people.ownerId,
        ...more,
      });
    await late({
      client: this.newClient('paper'),
      uses: [
        {
          productId: register.umberId,
          code: texts('paper lot'),
          useBy: '2095-12-31',
          knownBy: 'typed',
          drops: 4,
          reason: texts.ofClient('why late'),
        },
        { productId: register.gelId, codeState: 'unreadable', knownBy: 'typed', appliedBy: people.artistId },
      ],
    });
    const touchUp = await late({
      ...this.whoAndWhat,
      occurredAt: minutes(-1),
      visitKind: 'touch-up',
      followsSessionId,
      uses: [
        { containerId: stock.umber.containerId, knownBy: 'own label', drops: 1 },
        { lotId: stock.sand.lotId, knownBy: 'typed', drops: 1 },
      ],
    });
    return touchUp.id;
  }

  async healed(sessionId: string, seenAtSessionId: string): Promise<void> {
    await this.service.made(`/sessions/${sessionId}/healed-result`, {
      retainedColourPercent: 70,
      note: this.texts.ofClient('healed'),
      seenAtSessionId,
    });
  }
}

/** Clients, by id. */
export interface LivedClients {
  treatedId: string;
}

/** Clients, procedures and visits of every kind, and the alerts that all of it opened. */
export async function liveVisits(
  service: RecordingService,
  texts: Texts,
  people: LivedPeople,
  register: LivedRegister,
  stock: LivedStock,
): Promise<LivedClients> {
  const procedure = await service.made<ProcedureView>('/procedures', {
    name: texts('procedure'),
    bodyPlace: 'brows',
  });
  await service.changed('PATCH', `/procedures/${procedure.id}`, {
    version: procedure.version,
    name: texts('procedure renamed'),
  });
  const items = [
    { productId: register.umberId, quantity: 1 },
    { configuration: register.configuration, quantity: 1 },
  ];
  await service.changed('PUT', `/procedures/${procedure.id}/kit-list`, { items });
  const { artistId } = people;
  await service.changed('PUT', `/procedures/${procedure.id}/kit-list`, { artistId, items });

  const list = {
    text: stringify(
      [
        {
          'client name': texts.ofClient('client from a list'),
          contact: texts.ofClient('contact from a list'),
          'planned start': minutes(300),
        },
      ],
      { header: true },
    ),
    artistId,
    procedureId: procedure.id,
    visitKind: 'patch test',
  };
  await service.made('/bookings/preview', { ...list, id: undefined });
  await service.made('/bookings', list);

  const client = await service.made<WrittenClientView>('/clients', {
    name: texts.ofClient('client'),
    contact: texts.ofClient('client phone'),
    note: texts.ofClient('client note'),
  });
  await service.changed('PATCH', `/clients/${client.id}`, {
    version: client.version,
    name: texts.ofClient('client renamed'),
    contact: texts.ofClient('client phone later'),
    note: texts.ofClient('client note later'),
  });
  await service.post('/clients/search', { id: undefined, text: texts.ofClient('client renamed') });

  const visits = new Visits(service, texts, people, register, stock, procedure.id, client.id);
  await visits.complete();
  const mine = await visits.plan();
  await service.made(`/sessions/${mine.id}/cancellation`);
  await service.made(`/sessions/${(await visits.plan()).id}/non-attendance`);
  const earlier = await service.made<WrittenSessionView>('/sessions/walk-in', {
    clientId: client.id,
    artistId,
    procedureId: procedure.id,
    visitKind: 'first session',
  });
  await service.made(`/sessions/${earlier.id}/completion`, {
    lines: [],
    complications: null,
    signedBy: artistId,
  });
  await service.made('/sessions/walk-in', {
    clientId: client.id,
    artistId,
    procedureId: procedure.id,
    visitKind: 'touch-up',
    followsSessionId: earlier.id,
  });
  await visits.leaveOpen(earlier.id);
  await visits.healed(earlier.id, await visits.recordLate(earlier.id));
  await service.post('/trace', { id: undefined, lotIds: [stock.umber.lotId, stock.blend.lotId] });

  await service.made('/alerts/sweep');
  const { items: alerts } = await service.seen<AlertPageView>('/alerts');
  await service.made(`/alerts/${alerts[0]?.id}/acknowledge`);
  return { treatedId: client.id };
}
