import { parse } from 'csv-parse/sync';
import { readSheet } from 'read-excel-file/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ConfigurationView } from '../../src/catalogue/configurations.views.js';
import type {
  ClientRecallsView,
  ExposedClientPageView,
  ExposedSessionView,
  ExposurePageView,
} from '../../src/recalls/exposures/exposures.views.js';
import type { PlannedSessionsView } from '../../src/recalls/exposures/planned-sessions.views.js';
import type { OpenedRecallView } from '../../src/recalls/recalls.views.js';
import type { CompletionView } from '../../src/sessions/completion.views.js';
import type { RecordedUsesView } from '../../src/sessions/late-records.views.js';
import { makeSampleStudio, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, strictestEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { type GivenProduct, StockedStudio } from '../support/stocked-studio.js';

interface Bottle {
  lotId: string;
  containerId: string;
}

/** Midday in Vienna so many days ago, so that no test depends on the hour it runs at. */
function middayAgo(days: number): string {
  return `${new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10)}T10:00:00.000Z`;
}

describe.each(strictestEngine)('exposures of a recall, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let stocked: StockedStudio;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    stocked = new StockedStudio(service);
    const settings = await service.seen<{ version: number }>('');
    await service.patch('', { version: settings.version, houseBlends: 'allowed', timeZone: 'Europe/Vienna' });
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', { version, retentionPreset: 'own', retentionYears: 3 });
  });
  afterAll(() => service.dispose());

  let products = 0;
  /** Each test has a product of its own, since uses of one product concern each other. */
  const product = (given: Partial<GivenProduct> = {}) => {
    products += 1;
    return stocked.product({ name: `Umber ${products}`, ...given });
  };
  const client = (name: string) => service.made<{ id: string; reference: string }>('/clients', { name });
  const bottle = async (productId: string, code: string, openedAt?: string): Promise<Bottle> => {
    const { lot, containers } = await stocked.receive(productId, { code, ...(openedAt && { openedAt }) });
    return { lotId: lot.id, containerId: containers[0]?.id ?? '' };
  };
  const open = (productId: string, codes: string[], body: object = {}) =>
    service.made<OpenedRecallView>('/recalls', {
      title: 'Umber',
      scope: {
        items: [
          {
            ...{ gtins: [], productIds: [productId], openEnded: false },
            lots: codes.map((code) => ({ kind: 'code', code })),
          },
        ],
      },
      ...body,
    });
  const late = (clientId: string, use: object, day: number, body: object = {}) =>
    service.made<RecordedUsesView>('/sessions/late', {
      ...{ source: 'paper', occurredAt: middayAgo(day), clientId, artistId: studio.ownerId },
      ...{ procedureId: studio.procedureId, visitKind: 'first session', signedBy: studio.ownerId },
      uses: [{ knownBy: 'own label', microlitres: 50, ...use }],
      ...body,
    });
  const shown = (recallId: string, query = '') =>
    service.seen<ExposurePageView>(`/recalls/${recallId}/exposures${query}`);
  const clientsOf = (recallId: string, query = '') =>
    service.seen<ExposedClientPageView>(`/recalls/${recallId}/exposed-clients${query}`);
  const told = ({ items }: ExposurePageView) =>
    items.map(({ sessionId, certainty, reasons }) => [sessionId, certainty, ...reasons]);

  /** A session of today in which some of a container was used in a mix. */
  async function treatToday(clientId: string, containerId: string, microlitres: number) {
    const sessionId = await walkIn(service, studio, { clientId });
    const { labelCode } = await service.seen<{ labelCode: string }>(`/containers/${containerId}`);
    await service.made(`/sessions/${sessionId}/scans`, { symbol: labelCode });
    const mix = await service.made<{ id: string }>(`/sessions/${sessionId}/mixes`, { label: 'base' });
    await service.made(`/sessions/${sessionId}/mixes/${mix.id}/components`, { containerId, microlitres });
    const { uses } = await service.made<CompletionView>(`/sessions/${sessionId}/completion`, {
      ...{ lines: [], complications: null, signedBy: studio.ownerId },
    });
    return { sessionId, useId: uses[0]?.id ?? '' };
  }

  it('are certain by a label, and possible by a list, an undecided lot, or another lot that was open that day', async () => {
    const umber = await product();
    const recalled = await bottle(umber, 'EX-100', middayAgo(60));
    const near = await bottle(umber, 'EX 100', middayAgo(200));
    const other = await bottle(umber, 'ZQ-955', middayAgo(300));
    const someone = await client('Someone');
    const record = async (lot: Bottle, knownBy: string, day: number, body: object = {}) =>
      (await late(someone.id, { containerId: lot.containerId, knownBy }, day, body)).id;

    const label = await record(recalled, 'own label', 50);
    const patch = await record(recalled, "maker's symbol", 49, { visitKind: 'patch test' });
    const training = await record(recalled, 'typed', 48, { visitKind: 'training', source: 'late' });
    const list = await record(recalled, 'picked from a list', 47);
    const undecided = await record(near, 'own label', 46);
    const both = await record(near, 'picked from a list', 45);
    const dayOfOpening = await record(other, 'picked from a list', 60);
    await record(other, 'own label', 44);
    // No bottle of the recall was open yet.
    await record(other, 'picked from a list', 250);
    const { id } = await open(umber, ['EX-100'], { holdPossible: 'none' });

    const page = await shown(id);
    expect(told(page)).toEqual([
      [dayOfOpening, 'possible', 'another open lot that day'],
      [label, 'certain'],
      [patch, 'certain'],
      [training, 'certain'],
      [list, 'possible', 'lot picked from a list'],
      [undecided, 'possible', 'lot undecided'],
      [both, 'possible', 'lot undecided', 'lot picked from a list'],
    ]);
    expect(page.totals).toEqual({
      ...{ clients: 1, certainClients: 1, possibleClients: 0, erasedClients: 0 },
      ...{ sessions: 7, certainSessions: 3, possibleSessions: 4 },
      ...{ uses: 7, certainUses: 3, possibleUses: 4, openLotUses: 1, unknownAmountUses: 0, reversedUses: 0 },
      byVisitKind: [
        { visitKind: 'first session', sessions: 5, clients: 1 },
        { visitKind: 'patch test', sessions: 1, clients: 1 },
        { visitKind: 'training', sessions: 1, clients: 1 },
      ],
    });
    expect(page.items[0]?.uses).toMatchObject([
      {
        ...{ lotId: other.lotId, lotCode: 'ZQ-955', knownBy: 'picked from a list', through: [] },
        lots: [
          {
            lotId: near.lotId,
            standing: 'undecided',
            as: 'another open lot that day',
            shareMicrolitres: null,
          },
          { lotId: recalled.lotId, lotCode: 'EX-100', standing: 'affected', as: 'another open lot that day' },
        ],
      },
    ]);
    expect(page.items[1]).toMatchObject({
      ...{ clientId: someone.id, clientReference: someone.reference, day: middayAgo(50).slice(0, 10) },
      ...{
        bodyPlace: 'brows',
        procedureName: 'Powder brows',
        artistId: studio.ownerId,
        recordedFrom: 'paper',
      },
      uses: [
        {
          ...{ microlitres: 50, amountKnown: true, lotCode: 'EX-100' },
          lots: [{ lotId: recalled.lotId, standing: 'affected', as: 'itself', shareMicrolitres: 50 }],
        },
      ],
    });
    expect(JSON.stringify(page)).not.toContain('Someone');

    const decision = { decision: 'not affected', reason: 'Another year is printed on it' };
    await service.made(`/recalls/${id}/lots/${near.lotId}/decisions`, decision);
    const decided = await shown(id);
    expect(told(decided).map(([sessionId]) => sessionId)).toEqual([
      // Picked from a list on days on which a recalled lot was open, it may have been that one.
      ...[dayOfOpening, label, patch, training, list, both],
    ]);
    expect(decided.items.at(-1)?.reasons).toEqual(['another open lot that day']);
  });

  it('reach through mixes and house blends of blends, with the share of each', async () => {
    const umber = await product();
    const recalled = await bottle(umber, 'BL-100', middayAgo(20));
    const other = await bottle(umber, 'ZQ-966', middayAgo(20));
    const blend = (parents: { containerId: string; microlitres: number }[]) =>
      service.made<Bottle>('/blends', { productId: umber, parents, placeId: studio.placeId });
    const first = await blend([
      { containerId: recalled.containerId, microlitres: 1_000 },
      { containerId: other.containerId, microlitres: 3_000 },
    ]);
    const second = await blend([
      { containerId: first.containerId, microlitres: 1_000 },
      { containerId: other.containerId, microlitres: 1_000 },
    ]);
    const [direct, deep, untouched] = [
      await client('Direct'),
      await client('Deep'),
      await client('Untouched'),
    ];
    await treatToday(direct.id, recalled.containerId, 40);
    await treatToday(deep.id, second.containerId, 200);
    await treatToday(untouched.id, other.containerId, 40);
    const { id } = await open(umber, ['BL-100']);

    const { items, totals } = await shown(id);
    expect(totals).toMatchObject({ clients: 2, certainClients: 2, sessions: 2, uses: 2 });
    expect(items.map(({ clientId, uses }) => [clientId, uses[0]?.through, uses[0]?.lots])).toMatchObject([
      [direct.id, ['mix'], [{ lotId: recalled.lotId, as: 'itself', shareMicrolitres: 40 }]],
      [deep.id, ['mix', 'house blend'], [{ lotCode: 'BL-100', as: 'house blend', shareMicrolitres: 25 }]],
    ]);
  });

  it('leave out what was recorded by mistake, and tell of it, and of amounts nobody knows', async () => {
    const umber = await product();
    const recalled = await bottle(umber, 'RV-100', middayAgo(20));
    const [kept, mistaken] = [await client('Kept'), await client('Mistaken')];
    await late(kept.id, { containerId: recalled.containerId, microlitres: undefined }, 10);
    const { id: sessionId, uses } = await late(mistaken.id, { containerId: recalled.containerId }, 9);
    const { id } = await open(umber, ['RV-100']);
    expect((await shown(id)).totals).toMatchObject({ clients: 2, reversedUses: 0, unknownAmountUses: 1 });
    const reversal = { reason: 'that was another visit' };
    await service.made(`/sessions/${sessionId}/uses/${uses[0]?.id}/reversal`, reversal);
    const { totals, items } = await shown(id);
    expect(totals).toMatchObject({ clients: 1, uses: 1, reversedUses: 1, unknownAmountUses: 1 });
    expect(items).toMatchObject([{ clientId: kept.id, uses: [{ amountKnown: false, microlitres: 0 }] }]);
    const { items: clients } = await clientsOf(id);
    expect(clients.map(({ clientId }) => clientId)).toEqual([kept.id]);
  });

  it('count what was used although it was held, and boxes while they had pieces', async () => {
    const liner = await product({ kind: 'cartridge', name: 'Liner' });
    const { lot, containers } = await stocked.receive(liner, { code: 'BX-100', quantity: 3 });
    const box = containers[0]?.id ?? '';
    const other = await stocked.receive(liner, { code: 'ZQ-977', quantity: 20 });
    const otherBox = other.containers[0]?.id ?? '';
    const [held, picked] = [await client('Held'), await client('Picked')];
    const { id } = await open(liner, ['BX-100']);
    const sessionId = await walkIn(service, studio, { clientId: held.id });
    await service.made(`/sessions/${sessionId}/completion`, {
      lines: [],
      besides: [{ containerId: box, pieces: 3, reason: 'it was opened before anyone knew' }],
      ...{ complications: null, signedBy: studio.ownerId },
    });
    // Emptied today, so that it was at hand today.
    const now = { occurredAt: new Date().toISOString() };
    const use = { containerId: otherBox, pieces: 1, microlitres: undefined, knownBy: 'picked from a list' };
    await late(picked.id, use, 0, now);
    const { items } = await shown(id);
    const of = (clientId: string) => items.find((item) => item.clientId === clientId);
    expect(of(held.id)?.uses).toMatchObject([{ pieces: 3, againstRefusal: ['recalled'], lotId: lot.id }]);
    expect(of(picked.id)).toMatchObject({
      ...{ certainty: 'possible', reasons: ['another open lot that day'] },
      uses: [{ lots: [{ lotId: lot.id, shareMicrolitres: null }] }],
    });
  });

  it('are paged without leaving anybody out, the certain first, and end where the list changed', async () => {
    const umber = await product();
    const recalled = await bottle(umber, 'PG-100', middayAgo(90));
    const people: string[] = [];
    for (const [index, knownBy] of ['own label', 'picked from a list', 'typed', 'own label'].entries()) {
      const { id: clientId } = await client(`Person ${index}`);
      people.push(clientId);
      await late(clientId, { containerId: recalled.containerId, knownBy }, 80 - index);
      await late(clientId, { containerId: recalled.containerId, knownBy }, 70 - index);
    }
    const { id } = await open(umber, ['PG-100']);
    const [first, second, third, fourth] = people;
    const all: ExposedClientPageView['items'] = [];
    for (let after: string | null = ''; after !== null; ) {
      const page: ExposedClientPageView = await clientsOf(id, `?limit=1${after && `&after=${after}`}`);
      expect(page.totals).toMatchObject({ clients: 4, certainClients: 3, possibleClients: 1, sessions: 8 });
      all.push(...page.items);
      after = page.next;
    }
    expect(all.map(({ clientId }) => clientId)).toEqual([fourth, third, first, second]);
    expect(all[2]).toMatchObject({
      ...{ certainty: 'certain', sessions: 2, certainSessions: 2, uses: 2, contactState: 'not tried' },
      ...{ firstDay: middayAgo(80).slice(0, 10), lastDay: middayAgo(70).slice(0, 10), latestContact: null },
    });
    const possible = await clientsOf(id, '?certainty=possible');
    expect(possible.items.map(({ clientId }) => clientId)).toEqual([second]);
    const sessions: ExposedSessionView[] = [];
    for (let after: string | null = ''; after !== null; ) {
      const page: ExposurePageView = await shown(id, `?limit=3${after && `&after=${after}`}`);
      sessions.push(...page.items);
      after = page.next;
    }
    expect(new Set(sessions.map(({ sessionId }) => sessionId)).size).toBe(8);
    const ofFirst = await shown(id, `?clientId=${first}`);
    expect(ofFirst.items.map(({ clientId }) => clientId)).toEqual([first, first]);
    for (const path of [`exposed-clients?after=${studio.clientId}`, `exposures?after=${studio.clientId}`]) {
      const answer = await service.get<ProblemBody>(`/recalls/${id}/${path}`);
      expect(answer).toMatchObject({ status: 400, body: { code: 'invalid-fields' } });
    }
    const unknown = await service.get<ProblemBody>(`/recalls/${studio.clientId}/exposures`);
    expect(unknown).toMatchObject({ status: 404, body: { code: 'not-found' } });
  });

  it('leave as CSV and as a workbook with the same rows, and contacts to those who tell', async () => {
    const umber = await product();
    const recalled = await bottle(umber, '=1+1', middayAgo(90));
    const [ida, erased] = [await client('Ida Brandl'), await client('Erased Person')];
    await late(ida.id, { containerId: recalled.containerId }, 20);
    await late(erased.id, { containerId: recalled.containerId, knownBy: 'picked from a list' }, 6 * 365);
    const erasure = await service.made<{ answer: string }>(`/clients/${erased.id}/erasure`, {
      ground: 'consent withdrawn',
    });
    expect(erasure.answer).toBe('erased');
    const { id } = await open(umber, ['=1+1']);
    expect((await clientsOf(id)).totals).toMatchObject({ clients: 2, erasedClients: 1 });
    expect((await clientsOf(id)).items.at(-1)).toMatchObject({
      ...{ clientId: erased.id, clientReference: erased.reference, contactState: 'erased, cannot be told' },
      erasedAt: expect.any(String),
    });
    const csv = await service.get<string>(`/recalls/${id}/exposures.csv`);
    expect(csv.headers.get('content-type')).toMatch(/^text\/csv/);
    const rows: Record<string, string>[] = parse(csv.body, { bom: true, columns: true });
    expect(rows).toMatchObject([
      {
        ...{ client_id: erased.id, certainty: 'possible', reasons: 'lot picked from a list' },
        ...{ client_reference: erased.reference, contact_state: 'erased, cannot be told' },
      },
      {
        ...{ date: middayAgo(20).slice(0, 10), client_id: ida.id, client_reference: ida.reference },
        ...{ certainty: 'certain', reasons: '', recalled_lot_code: "'=1+1", through: 'directly' },
        ...{ microlitres_estimate: '50', amount_known: 'yes', contact_state: 'not tried' },
        ...{ visit_kind: 'first session', place_on_body: 'brows', recalled_maker: expect.any(String) },
      },
    ]);
    const workbook = await service.fetch(`${service.studio}/recalls/${id}/exposures.xlsx`);
    const [header, ...cells] = await readSheet(Buffer.from(await workbook.arrayBuffer()));
    expect(header).toEqual(Object.keys(rows[0] ?? {}));
    const column = (name: string) => cells.map((row) => row[header?.indexOf(name) ?? -1]);
    expect(column('client_id')).toEqual([erased.id, ida.id]);
    expect(column('recalled_lot_code')).toEqual(['=1+1', '=1+1']);
    expect(column('microlitres_estimate')).toEqual([50, 50]);
    expect(csv.body).not.toContain('Brandl');

    const list = await service.get<string>(`/recalls/${id}/contact-list.csv`);
    const contacts: Record<string, string>[] = parse(list.body, { bom: true, columns: true });
    expect(contacts).toMatchObject([
      { client_id: ida.id, name: 'Ida Brandl', certainty: 'certain', contact_state: 'not tried' },
      { client_id: erased.id, name: '', contact_state: 'erased, cannot be told', certainty: 'possible' },
    ]);
    const contact = { audience: 'client', clientId: ida.id, channel: 'telephone', outcome: 'reached' };
    const { id: contactId } = await service.made<{ id: string }>(`/recalls/${id}/contacts`, contact);
    expect((await clientsOf(id)).items[0]).toMatchObject({
      ...{ clientId: ida.id, contactState: 'reached' },
      latestContact: { id: contactId, channel: 'telephone', outcome: 'reached' },
    });
    const accesses = await service.seen<{ items: { what: string }[] }>(`/clients/${ida.id}/accesses`);
    expect(accesses.items.map(({ what }) => what)).toContain('recall');
  });

  it('stand in the record of the client, rehearsals and other recalls left out', async () => {
    const umber = await product();
    const recalled = await bottle(umber, 'CR-100', middayAgo(90));
    const other = await bottle(umber, 'ZQ-988', middayAgo(90));
    const [touched, maybe, none] = [await client('Touched'), await client('Maybe'), await client('None')];
    await late(touched.id, { containerId: recalled.containerId }, 20);
    await late(maybe.id, { containerId: other.containerId, knownBy: 'picked from a list' }, 20);
    await late(none.id, { containerId: other.containerId }, 20);
    const { id } = await open(umber, ['CR-100'], { title: 'Umber, spring' });
    await open(umber, ['CR-999'], { title: 'Another' });
    const recalls = (clientId: string) => service.seen<ClientRecallsView>(`/clients/${clientId}/recalls`);
    const day = middayAgo(20).slice(0, 10);
    expect(await recalls(touched.id)).toMatchObject({
      moreRecalls: false,
      items: [
        {
          ...{ recallId: id, title: 'Umber, spring', state: 'open', certainty: 'certain', sessions: 1 },
          ...{ firstDay: day, lastDay: day, contactState: 'not tried' },
        },
      ],
    });
    expect((await recalls(maybe.id)).items).toMatchObject([{ recallId: id, certainty: 'possible' }]);
    expect((await recalls(none.id)).items).toEqual([]);
  });

  describe('sessions to come', () => {
    const planned = (recallId: string, query = '') =>
      service.seen<PlannedSessionsView>(`/recalls/${recallId}/planned-sessions${query}`);
    const ahead = (days: number) => middayAgo(-days);
    let procedures = 0;
    const procedureWith = async (items: object[]) => {
      procedures += 1;
      const { id } = await service.made<{ id: string }>('/procedures', {
        name: `Brows ${procedures}`,
        bodyPlace: 'brows',
      });
      await service.put(`/procedures/${id}/kit-list`, { items });
      return id;
    };
    const plan = async (procedureId: string, day: number, body: object = {}) => {
      const visit = { clientId: studio.clientId, artistId: studio.ownerId, visitKind: 'first session' };
      const given = { ...visit, procedureId, plannedStart: ahead(day), ...body };
      return (await service.made<{ id: string }>('/sessions', given)).id;
    };

    it('are told while it lies on the tray or is in a cup', async () => {
      const umber = await product();
      const recalled = await bottle(umber, 'TR-100', middayAgo(20));
      const sessionId = await walkIn(service, studio);
      await service.made(`/sessions/${sessionId}/scans`, { symbol: 'TR-100' });
      const { id } = await open(umber, ['TR-100']);
      const { items } = await planned(id);
      expect(items).toMatchObject([
        {
          ...{ sessionId, state: 'in setup', reasons: ['on the tray'], follows: null, kitLines: [] },
          onTray: [{ containerId: recalled.containerId, inMix: false, lot: { lotCode: 'TR-100' } }],
        },
      ]);
      const mix = await service.made<{ id: string }>(`/sessions/${sessionId}/mixes`, { label: 'base' });
      const drops = { containerId: recalled.containerId, drops: 2 };
      await service.made(`/sessions/${sessionId}/mixes/${mix.id}/components`, drops);
      expect((await planned(id)).items[0]?.onTray).toMatchObject([{ inMix: true }]);
      // Nothing has touched anybody until it is said so.
      expect((await shown(id)).totals.sessions).toBe(0);
    });

    it('are told when they follow a session that used it', async () => {
      const umber = await product();
      const recalled = await bottle(umber, 'FO-100', middayAgo(90));
      const someone = await client('Coming back');
      const first = await late(someone.id, { containerId: recalled.containerId }, 30);
      const touchUp = await plan(studio.procedureId, 5, { clientId: someone.id, visitKind: 'touch-up' });
      const { id } = await open(umber, ['FO-100']);
      expect((await planned(id)).items).toMatchObject([
        {
          ...{ sessionId: touchUp, state: 'planned', visitKind: 'touch-up', day: ahead(5).slice(0, 10) },
          reasons: ['follows an exposed session'],
          follows: { sessionId: first.id, day: middayAgo(30).slice(0, 10), certainty: 'certain' },
        },
      ]);
    });

    it('are told when their kit list would have taken it, with what else is in date', async () => {
      const umber = await product();
      await stocked.receive(umber, { code: 'KI-100', useBy: '2080-12-31' });
      const other = await stocked.receive(umber, { code: 'ZQ-991', useBy: '2090-12-31' });
      const procedureId = await procedureWith([{ productId: umber, quantity: 1 }]);
      const elsewhere = await procedureWith([{ productId: studio.gelId, quantity: 1 }]);
      const [late, soon] = [await plan(procedureId, 9), await plan(procedureId, 3)];
      await plan(elsewhere, 3);
      const { id } = await open(umber, ['KI-100']);
      const { sessions, items, next } = await planned(id, '?limit=1');
      expect({ sessions, next }).toEqual({ sessions: 2, next: soon });
      expect(items).toMatchObject([
        {
          ...{ sessionId: soon, reasons: ['kit list'], onTray: [], follows: null },
          kitLines: [
            {
              ...{
                productId: umber,
                configuration: null,
                quantityPieces: 1,
                enoughElse: true,
                elsePieces: 1,
              },
              lots: [{ lotCode: 'KI-100', standing: 'affected' }],
              elseInDate: [{ lotId: other.lot.id, lotCode: 'ZQ-991', lastDay: '2090-12-31', pieces: 1 }],
            },
          ],
        },
      ]);
      expect((await planned(id, `?after=${next}`)).items.map(({ sessionId }) => sessionId)).toEqual([late]);
      const answer = await service.get<ProblemBody>(
        `/recalls/${id}/planned-sessions?after=${studio.clientId}`,
      );
      expect(answer).toMatchObject({ status: 400, body: { code: 'invalid-fields' } });
    });

    it('are told when too few pieces of the configuration are left for them', async () => {
      const given = { kind: 'cartridge' as const, notation: '1203RLST', machineFit: 'one fit of its own' };
      const bad = await product({ ...given, name: 'Bad liner' });
      const good = await product({ ...given, name: 'Good liner' });
      await stocked.receive(bad, { code: 'CF-100', quantity: 20, useBy: '2080-12-31' });
      await stocked.receive(good, { code: 'CF-200', quantity: 3, useBy: '2090-12-31' });
      const pools = await service.seen<ConfigurationView[]>('/configurations');
      const pool = pools.find(({ products: pooled }) => pooled.some(({ id }) => id === bad));
      expect(pool?.products.map(({ id }) => id)).toContain(good);
      const procedureId = await procedureWith([{ configuration: pool?.keys[0], quantity: 2 }]);
      const [first, second] = [await plan(procedureId, 3), await plan(procedureId, 4)];
      const { id } = await open(bad, ['CF-100']);
      expect(
        (await planned(id)).items.map(({ sessionId, kitLines }) => [
          sessionId,
          kitLines[0]?.enoughElse,
          kitLines[0]?.elsePieces,
        ]),
      ).toEqual([
        [first, true, 3],
        [second, false, 1],
      ]);
    });
  });
});
