import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientAccessPageView } from '../../src/clients/client-accesses.views.js';
import type {
  ContactPageView,
  EffectivenessView,
  PreparedMessageView,
  RecipientPageView,
  RecordedContactView,
} from '../../src/recalls/contacts/contacts.views.js';
import type { OpenedRecallView } from '../../src/recalls/recalls.views.js';
import type { RecordedUsesView } from '../../src/sessions/late-records.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { makeSampleStudio, type SampleStudio } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { personOfRole } from '../support/signing-in.js';
import { StockedStudio } from '../support/stocked-studio.js';

interface Bottle {
  lotId: string;
  containerId: string;
  code: string;
}

const daysAgo = (days: number) =>
  `${new Date(Date.now() - days * 86_400_000).toISOString().slice(0, 10)}T10:00:00.000Z`;

describe.each(usualEngine)('telling people of a recall, on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let stocked: StockedStudio;
  let artistId: string;
  let auditor: Record<string, string>;
  let chainManager: Record<string, string>;
  let artist: Record<string, string>;
  let supplierId: string;

  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    stocked = new StockedStudio(service);
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', {
      ...{ version, houseBlends: 'allowed', timeZone: 'Europe/Vienna', name: 'Atelier Linde' },
      ...{ retentionPreset: 'own', retentionYears: 3, contactPoint: 'telephone 0800 555 0100' },
    });
    const roles = await Promise.all(
      (['artist', 'auditor', 'chain manager'] as const).map((role) => personOfRole(service, role)),
    );
    const [first, second, third] = roles;
    artist = { cookie: first?.cookie ?? '' };
    auditor = { cookie: second?.cookie ?? '' };
    chainManager = { cookie: third?.cookie ?? '' };
    artistId = roles[0]?.personId ?? '';
    supplierId = (await service.made<{ id: string }>('/suppliers', { name: 'Fernweg Supplies' })).id;
  });
  afterAll(() => service.dispose());

  let products = 0;
  const product = () => {
    products += 1;
    return stocked.product({ name: `Ink ${products}`, shade: 'Umber' });
  };
  const client = (name: string, contact?: string) =>
    service.made<{ id: string; reference: string }>('/clients', { name, ...(contact && { contact }) });
  const bottle = async (productId: string, code: string): Promise<Bottle> => {
    const { lot, containers } = await stocked.receive(productId, { code, openedAt: daysAgo(60) });
    return { lotId: lot.id, containerId: containers[0]?.id ?? '', code };
  };
  const scopeOf = (productId: string, codes: string[]) => ({
    items: [
      {
        ...{ gtins: [], productIds: [productId], openEnded: false },
        lots: codes.map((code) => ({ kind: 'code', code })),
      },
    ],
  });
  const open = (productId: string, codes: string[], body: object = {}) =>
    service.made<OpenedRecallView>('/recalls', {
      ...{ title: 'Ink', scope: scopeOf(productId, codes), issuer: 'Halden Ink', reference: 'HI-7' },
      ...{ risk: 'The ink may hold germs. Redness can follow.', remedy: 'The price is paid back.' },
      ...body,
    });
  const use = (
    clientId: string,
    { containerId }: Pick<Bottle, 'containerId'>,
    day: number,
    body: object = {},
    how = 'own label',
  ) =>
    service.made<RecordedUsesView>('/sessions/late', {
      ...{ source: 'paper', occurredAt: daysAgo(day), clientId, artistId: studio.ownerId },
      ...{ procedureId: studio.procedureId, visitKind: 'first session', signedBy: studio.ownerId },
      uses: [{ knownBy: how, microlitres: 50, containerId }],
      ...body,
    });
  const recipients = async (recallId: string, audience: string, query = '', headers = {}) => {
    const answer = await service.get<RecipientPageView>(
      `/recalls/${recallId}/recipients?audience=${audience}${query}`,
      headers,
    );
    expect(answer.status).toBe(200);
    return answer.body;
  };
  const contact = (recallId: string, body: object, headers = {}) =>
    service.post<RecordedContactView & ProblemBody>(
      `/recalls/${recallId}/contacts`,
      { channel: 'telephone', outcome: 'reached', ...body },
      headers,
    );
  const contacts = async (recallId: string, query = '', headers = {}) =>
    (await service.get<ContactPageView>(`/recalls/${recallId}/contacts${query}`, headers)).body;
  const message = (recallId: string, query: string, headers = {}) =>
    service.get<PreparedMessageView & ProblemBody>(`/recalls/${recallId}/messages?${query}`, headers);
  const textOf = ({ heading, body }: PreparedMessageView) =>
    [heading, ...body.map(({ text }) => text)].join('\n');
  const standings = ({ items }: RecipientPageView) => items.map(({ id, standing }) => [id, standing]);

  it('lists whom the lots touched, with names only for those who are shown them', async () => {
    const ink = await product();
    const recalled = await bottle(ink, 'RC-100');
    const [certain, possible, other] = await Promise.all([
      client('Ada Certain', '+43 1 5550111'),
      client('Pia Possible'),
      client('Uta Untouched'),
    ]);
    await use(certain.id, recalled, 20);
    await use(possible.id, recalled, 10, {}, 'picked from a list');
    const unrelated = await bottle(await product(), 'XX-1');
    await use(other.id, unrelated, 5);
    const { id } = await open(ink, ['RC-100']);

    const page = await recipients(id, 'client');
    expect(page.totals).toMatchObject({ toTell: 2, notTried: 2, outstanding: 2 });
    expect(page.items).toMatchObject([
      {
        ...{ clientId: certain.id, clientName: 'Ada Certain', clientContact: '+43 1 5550111' },
        ...{ certainty: 'certain', standing: 'not tried', attempts: 0, lastAt: null, erased: false },
      },
      { clientId: possible.id, clientName: 'Pia Possible', certainty: 'possible' },
    ]);
    const accesses = await service.seen<ClientAccessPageView>(`/clients/${certain.id}/accesses`);
    expect(accesses.items.map(({ what }) => what)).toContain('recall');
    for (const headers of [auditor, chainManager]) {
      const { items } = await recipients(id, 'client', '', headers);
      expect(items.map(({ clientReference }) => clientReference)).toEqual([
        certain.reference,
        possible.reference,
      ]);
      expect(
        items.every(({ clientName, clientContact }) => clientName === null && clientContact === null),
      ).toBe(true);
    }

    const first = await recipients(id, 'client', '&limit=1');
    expect([first.items.length, first.next, first.totals.toTell]).toEqual([1, certain.id, 2]);
    // Who was told meanwhile is still a place to go on from.
    await contact(id, { audience: 'client', clientId: certain.id });
    const second = await recipients(id, 'client', `&limit=1&outstanding=true&after=${certain.id}`);
    expect([standings(second), second.next]).toEqual([[[possible.id, 'not tried']], null]);
    expect((await recipients(id, 'client', '&outstanding=true')).items.length).toBe(1);
    const lost = await service.get(`/recalls/${id}/recipients?audience=client&after=${uuidv7()}`);
    expect(lost.status).toBe(400);
    expect((await service.get(`/recalls/${uuidv7()}/recipients?audience=client`)).status).toBe(404);
  });

  it('lists artists who used or have a lot, who delivered it, and the authorities that were told', async () => {
    const ink = await product();
    const { lines } = await service.made<ReceiptView>('/deliveries', {
      ...{ origin: 'purchase', supplierId, reference: 'note 12' },
      lines: [
        {
          ...{ productId: ink, codes: [{ kind: 'lot', code: 'RC-200' }], useBy: '2099-12-31', quantity: 2 },
          placeId: await stocked.shelf(),
        },
      ],
    });
    const [used, owned] = lines[0]?.containers ?? [];
    const lotId = lines[0]?.lot.id ?? '';
    const { id: placeId } = await service.made<{ id: string }>('/places', {
      ...{ name: 'Her case', kind: 'travelling case' },
    });
    await service.made(`/containers/${owned?.id}/move`, { placeId, ownerId: artistId });
    const someone = await client('Someone Treated');
    const bought = { lotId, containerId: used?.id ?? '', code: 'RC-200' };
    await use(someone.id, bought, 3);
    await use(someone.id, bought, 2, { visitKind: 'touch-up' });
    const { id } = await open(ink, ['RC-200']);

    const artists = await recipients(id, 'artist');
    expect(artists.items.map((one) => one.artistId).sort()).toEqual([artistId, studio.ownerId].sort());
    const suppliers = await recipients(id, 'supplier');
    expect(suppliers.items).toMatchObject([
      { id: supplierId, company: 'Fernweg Supplies', certainty: 'certain', standing: 'not tried' },
    ]);
    expect((await recipients(id, 'authority')).items).toEqual([]);

    await contact(id, { audience: 'artist', artistId, channel: 'in person' });
    await contact(id, { audience: 'supplier', company: ' fernweg  supplies', outcome: 'message left' });
    await contact(id, { audience: 'supplier', company: 'Another Supplier' });
    await contact(id, {
      audience: 'authority',
      company: 'Health office',
      channel: 'e-mail',
      note: 'by form',
    });
    expect((await recipients(id, 'supplier')).items).toMatchObject([
      { company: 'Fernweg Supplies', standing: 'message left' },
      { company: 'Another Supplier', standing: 'reached' },
    ]);
    expect((await recipients(id, 'authority')).items).toMatchObject([
      { company: 'Health office', standing: 'reached', attempts: 1 },
    ]);
    expect((await contacts(id, '?audience=authority', auditor)).items).toMatchObject([
      { company: 'Health office', note: 'by form' },
    ]);

    const toArtist = (await message(id, `audience=artist&artistId=${artistId}`)).body;
    expect(toArtist.recipient).toBe('Some artist');
    expect(textOf(toArtist)).toMatch(new RegExp(`you have at Atelier Linde: label ${owned?.labelCode}`));
    const toOwner = textOf((await message(id, `audience=artist&artistId=${studio.ownerId}`)).body);
    expect(toOwner).toMatch(
      /You used Halden Ink .* Umber, lot RC-200 at Atelier Linde between .*, in 2 sessions/,
    );
    const toSupplier = textOf(
      (await message(id, 'audience=supplier&company=Fernweg%20Supplies&language=de')).body,
    );
    expect(toSupplier).toMatch(
      /Sie haben 2 Stück von .*, Charge RC-200 an Atelier Linde geliefert, .*note 12/,
    );
    const toAuthority = textOf((await message(id, 'audience=authority&company=Health%20office')).body);
    expect(toAuthority).toMatch(/on 1 client for certain, on 0 more possibly\. Told so far: 0/);
    for (const text of [toOwner, toSupplier, toAuthority]) {
      expect(text).not.toContain('Someone Treated');
      expect(text).not.toContain(someone.reference);
    }
    expect((await message(id, `audience=artist&artistId=${uuidv7()}`)).status).toBe(404);
    expect((await message(id, 'audience=supplier&company=Nobody')).status).toBe(404);
  });

  it('prepares for each client a message that names exactly their lots, in either language', async () => {
    const ink = await product();
    const [one, two, near] = [
      await bottle(ink, 'RC-301'),
      await bottle(ink, 'RC-302'),
      // A space in place of a hyphen: possible until somebody decides.
      await bottle(ink, 'RC 301'),
    ];
    const unrelated = await bottle(await product(), 'OT-1');
    const blend = await service.made<{ containerId: string }>('/blends', {
      ...{ productId: await product(), placeId: await stocked.shelf() },
      parents: [two, unrelated].map(({ containerId }) => ({ containerId, microlitres: 100 })),
    });
    const [ada, bea, cora] = [
      await client('Ada'),
      await client('Bea', 'bea@example.org'),
      await client('Cora'),
    ];
    await use(ada.id, one, 30, { visitKind: 'patch test' });
    // Now: the blend is of today.
    await use(bea.id, blend, 0, { occurredAt: new Date().toISOString() });
    await use(cora.id, near, 20);
    const { id } = await open(ink, ['RC-301', 'RC-302'], { holdPossible: 'none' });

    const of = async (clientId: string, language = 'en') =>
      (await message(id, `audience=client&clientId=${clientId}&language=${language}`)).body;
    const toAda = await of(ada.id);
    expect(toAda).toMatchObject({
      ...{ audience: 'client', language: 'en', heading: 'Product safety recall', recipient: 'Ada' },
      ...{ recipientContact: null, drill: false, photoIds: [] },
      lots: [{ lotId: one.lotId, code: 'RC-301', certainty: 'certain' }],
    });
    expect(toAda.remarks.map(({ code }) => code)).toEqual(['no picture']);
    expect(textOf(toAda)).toMatch(
      /On \d+ \w+ 20\d\d at Atelier Linde \(patch test, brows\), .*lot RC-301 was used on you\./,
    );
    expect(textOf(toAda)).not.toContain('RC-302');
    expect(textOf(toAda)).toContain('0800 555 0100');
    expect(textOf(toAda)).toContain('The ink may hold germs.');
    const answered = new Set(toAda.body.flatMap(({ elements }) => elements).concat(toAda.headingElements));
    expect(toAda.elements.filter(({ code }) => !answered.has(code))).toEqual([]);

    const toBea = await of(bea.id, 'de');
    expect(toBea).toMatchObject({
      ...{ heading: 'Produktsicherheitsrückruf', recipient: 'Bea', recipientContact: 'bea@example.org' },
      lots: [{ lotId: two.lotId, code: 'RC-302' }],
    });
    expect(textOf(toBea)).toContain('in einer Mischung des Studios');
    expect(textOf(toBea)).not.toMatch(/RC-301|OT-1/);
    expect(toBea.remarks.map(({ code }) => code)).toContain('words in another language');

    const toCora = await of(cora.id);
    expect(toCora.lots).toMatchObject([{ lotId: near.lotId, certainty: 'possible' }]);
    expect(textOf(toCora)).toContain('may have been used on you');
    expect(textOf(toCora)).not.toMatch(/RC-30/);

    const stranger = await client('Nobody Touched');
    expect((await message(id, `audience=client&clientId=${stranger.id}`)).status).toBe(404);
    expect((await message(id, `audience=client&clientId=${uuidv7()}`)).status).toBe(404);
    const unsaid = await message(id, 'audience=client');
    expect([unsaid.status, unsaid.body.faults?.[0]?.field]).toEqual([400, 'clientId']);
    for (const headers of [auditor, artist, chainManager]) {
      expect((await message(id, `audience=client&clientId=${ada.id}`, headers)).status).toBe(403);
    }
  });

  it('records every attempt, seals what was said of a client, and refuses nothing that happened', async () => {
    const ink = await product();
    const recalled = await bottle(ink, 'RC-400');
    const ida = await client('Ida Told');
    const leaving = await client('Lea Leaving');
    for (const { id } of [ida, leaving]) await use(id, recalled, 15);
    const { id } = await open(ink, ['RC-400']);
    const at = (minutes: number) => new Date(Date.now() - minutes * 60_000).toISOString();
    const request = uuidv7();
    const tried = { audience: 'client', clientId: ida.id, outcome: 'no answer', occurredAt: at(30) };
    const recorded = await contact(id, { id: request, ...tried });
    expect(recorded.status).toBe(201);
    expect((await contact(id, { id: request, ...tried })).body).toEqual(recorded.body);
    await contact(id, { ...tried, outcome: 'message left', occurredAt: at(20), note: 'her sister answered' });
    expect(standings(await recipients(id, 'client', '&outstanding=true'))).toEqual(
      expect.arrayContaining([[ida.id, 'message left']]),
    );
    await contact(id, { ...tried, outcome: 'reached', occurredAt: at(10) });
    await contact(id, { ...tried, occurredAt: at(5) });
    const told = (await recipients(id, 'client')).items.find(({ clientId }) => clientId === ida.id);
    expect(told).toMatchObject({ standing: 'reached', attempts: 4, lastAt: expect.any(String) });

    const said = (page: ContactPageView) =>
      page.items.map(({ outcome, note, clientReference }) => [outcome, note, clientReference]);
    const ofIda = await contacts(id, `?clientId=${ida.id}`);
    expect(said(ofIda)).toEqual([
      ['no answer', null, ida.reference],
      ['reached', null, ida.reference],
      ['message left', 'her sister answered', ida.reference],
      ['no answer', null, ida.reference],
    ]);
    const first = await contacts(id, '?limit=3');
    expect([first.items.length, first.next]).toEqual([3, first.items[2]?.id]);
    expect((await contacts(id, `?limit=3&after=${first.next}`)).items.length).toBe(1);
    for (const headers of [auditor, chainManager]) {
      expect(said(await contacts(id, '', headers)).map(([, note]) => note)).toEqual([null, null, null, null]);
    }

    await contact(id, { audience: 'client', clientId: leaving.id, outcome: 'no answer', note: 'moved away' });
    const erasure = await service.made<{ answer: string }>(`/clients/${leaving.id}/erasure`, {
      ground: 'consent withdrawn',
      overrides: ['no legal obligation applies', 'the client was told of it'],
    });
    expect(erasure.answer).toBe('erased');
    const erased = await recipients(id, 'client');
    expect(erased.totals).toMatchObject({ toTell: 2, erased: 1, outstanding: 0 });
    expect(erased.items.find(({ clientId }) => clientId === leaving.id)).toMatchObject({
      ...{ erased: true, clientName: null, standing: 'no answer' },
    });
    // They came by themselves.
    const late = { audience: 'client', clientId: leaving.id, channel: 'in person', note: 'came by' };
    expect((await contact(id, late)).status).toBe(201);
    expect(
      said(await contacts(id, `?clientId=${leaving.id}`)).map(([outcome, note]) => [outcome, note]),
    ).toEqual([
      ['reached', null],
      ['no answer', null],
    ]);
    const toErased = (await message(id, `audience=client&clientId=${leaving.id}`)).body;
    expect([toErased.recipient, toErased.recipientContact]).toEqual([null, null]);
    expect(toErased.remarks.map(({ code }) => code)).toContain('erased');

    const untouched = await client('Una Asked');
    expect((await contact(id, { audience: 'client', clientId: untouched.id })).status).toBe(201);
    await service.made(`/recalls/${id}/withdrawal`, { reason: 'the maker withdrew it' });
    expect((await contact(id, { audience: 'client', clientId: ida.id, channel: 'letter' })).status).toBe(201);
  });

  it('refuses whoever may not, and what does not say who was meant', async () => {
    const ink = await product();
    const { id } = await open(ink, ['RC-500']);
    const ida = await client('Ida Meant');
    const toClient = { audience: 'client', clientId: ida.id };
    const toSupplier = { audience: 'supplier', company: 'Fernweg Supplies' };
    expect((await contact(id, toClient, chainManager)).body).toMatchObject({
      code: 'not-allowed',
      detail: expect.stringContaining('tell clients of recalls'),
    });
    expect((await contact(id, toSupplier, chainManager)).status).toBe(201);
    for (const headers of [artist, auditor]) {
      expect((await contact(id, toSupplier, headers)).status).toBe(403);
    }
    expect((await contact(id, { ...toClient, clientId: uuidv7() })).status).toBe(404);
    expect((await contact(id, { audience: 'artist', artistId: uuidv7() })).status).toBe(404);
    expect((await contact(uuidv7(), toSupplier)).status).toBe(404);
    const mixedUp = await contact(id, { ...toClient, company: 'Fernweg Supplies' });
    expect([mixedUp.status, mixedUp.body.faults]).toEqual([
      400,
      [{ field: 'company', message: 'is not taken with the audience client; leave it out' }],
    ]);
    expect((await contact(id, { ...toClient, outcome: 'perhaps' })).status).toBe(400);
    expect((await contact(id, { ...toClient, occurredAt: '2099-01-01T00:00:00Z' })).body.code).toBe(
      'unusable-time',
    );
  });

  it('asks to tell people again when a further lot of theirs comes to the recall', async () => {
    const ink = await product();
    const [one, two] = [await bottle(ink, 'RC-601'), await bottle(ink, 'KX-752')];
    const [both, onlyFirst] = [await client('Bo Both'), await client('Fi First')];
    await use(both.id, one, 12);
    await use(both.id, two, 11);
    await use(onlyFirst.id, one, 10);
    const { id } = await open(ink, ['RC-601']);
    for (const clientId of [both.id, onlyFirst.id]) await contact(id, { audience: 'client', clientId });
    expect((await recipients(id, 'client')).totals).toMatchObject({ toTell: 2, reached: 2, outstanding: 0 });

    await service.made(`/recalls/${id}/scopes`, {
      ...{ scope: scopeOf(ink, ['RC-601', 'KX-752']), reason: 'the maker added a lot' },
    });
    const widened = await recipients(id, 'client');
    expect(widened.totals).toMatchObject({ toTell: 2, reached: 1, notTried: 1, outstanding: 1 });
    expect(widened.items.find(({ clientId }) => clientId === both.id)).toMatchObject({
      ...{ standing: 'not tried', toldEarlier: true, attempts: 1 },
    });
    const names = (await message(id, `audience=client&clientId=${both.id}`)).body.lots;
    expect(names.map(({ code }) => code).sort()).toEqual(['KX-752', 'RC-601']);
    await contact(id, { audience: 'client', clientId: both.id });
    expect((await recipients(id, 'client')).totals).toMatchObject({ reached: 2, outstanding: 0 });
  });

  it('tells how many were told, and which level of checks that meets', async () => {
    const ink = await product();
    const recalled = await bottle(ink, 'RC-700');
    const clients = [];
    for (let index = 0; index < 3; index += 1) {
      const { id } = await client(`Client ${index}`);
      await use(id, recalled, 9 - index);
      clients.push(id);
    }
    const { id } = await open(ink, ['RC-700']);
    const shown = (query = '') => service.seen<EffectivenessView>(`/recalls/${id}/effectiveness${query}`);
    expect(await shown()).toMatchObject({ toTell: 4, told: 0, toldPercent: 0, met: 'E' });
    await contact(id, { audience: 'client', clientId: clients[0] });
    await contact(id, { audience: 'client', clientId: clients[1], outcome: 'refused' });
    await contact(id, { audience: 'client', clientId: clients[2], outcome: 'unreachable' });
    const half = await shown('?agreedPercent=50');
    expect(half.audiences[0]).toMatchObject({
      ...{ audience: 'client', toTell: 3, told: 2, toldPercent: 66.6, unreachable: 1, outstanding: 0 },
    });
    expect(half.levels.map(({ level, toCheck, met }) => [level, toCheck, met])).toEqual([
      ['A', 4, false],
      ['B', 2, true],
      ['C', 1, true],
      ['D', 1, true],
      ['E', 0, true],
    ]);
    expect(half).toMatchObject({ met: 'B', caveat: 'not verified against the official text' });
    await contact(id, { audience: 'client', clientId: clients[2] });
    await contact(id, { audience: 'artist', artistId: studio.ownerId, channel: 'in person' });
    expect(await shown()).toMatchObject({ told: 4, toldPercent: 100, met: 'A' });
    expect((await service.get(`/recalls/${id}/effectiveness?agreedPercent=5`)).status).toBe(400);
  });

  it('tells nobody in a drill, and prepares messages all the same', async () => {
    const ink = await product();
    const rehearsed = await bottle(ink, 'RC-800');
    const ida = await client('Ida Rehearsed');
    await use(ida.id, rehearsed, 4);
    const { recallId: id } = await service.made<{ recallId: string }>('/recalls/drills', {
      lotId: rehearsed.lotId,
    });
    const refused = await contact(id, { audience: 'client', clientId: ida.id });
    expect([refused.status, refused.body.code]).toEqual([409, 'wrong-state']);
    expect(refused.body.detail).toContain('drill');
    expect((await contacts(id)).items).toEqual([]);
    const prepared = (await message(id, `audience=client&clientId=${ida.id}`)).body;
    expect(prepared.drill).toBe(true);
    expect(prepared.remarks.map(({ code }) => code)).toContain('drill');
    expect(textOf(prepared)).toContain('RC-800');
  });
});
