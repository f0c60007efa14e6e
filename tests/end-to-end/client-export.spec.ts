import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { StudioView } from '../../src/identity/studios.views.js';
import type { ClientExportView } from '../../src/sessions/client-export.views.js';
import type { BlendView } from '../../src/stock/blends.views.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type ProblemBody, type RunningService, usualEngine } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';
import { personOfRole } from '../support/signing-in.js';
import { makeTreatedClient, type TreatedClient, texts } from '../support/treated-client.js';

interface Schema {
  $ref?: string;
  anyOf?: Schema[];
  properties?: Record<string, Schema>;
  required?: string[];
  items?: Schema;
}

interface ApiDocument {
  paths: Record<
    string,
    Record<string, { responses: Record<string, { content: Record<string, { schema: Schema }> }> }>
  >;
  components: { schemas: Record<string, Schema> };
}

/** Fields of a value that a schema does not describe, or that it promises and that are missing. */
function undescribed(document: ApiDocument, schema: Schema, value: unknown, path = '$'): string[] {
  const reference = schema.$ref ?? schema.anyOf?.find(({ $ref }) => $ref)?.$ref;
  if (reference !== undefined) {
    const named = document.components.schemas[reference.split('/').at(-1) ?? ''];
    return named ? undescribed(document, named, value, path) : [`${path}: ${reference} is missing`];
  }
  if (Array.isArray(value)) {
    return value.flatMap((item, index) =>
      undescribed(document, schema.items ?? {}, item, `${path}[${index}]`),
    );
  }
  if (value === null || typeof value !== 'object') return [];
  const { properties = {}, required = [] } = schema;
  return [
    ...required.filter((name) => !(name in value)).map((name) => `${path}.${name} is missing`),
    ...Object.entries(value).flatMap(([name, inner]) => {
      const described = properties[name];
      return described
        ? undescribed(document, described, inner, `${path}.${name}`)
        : [`${path}.${name} is not described`];
    }),
  ];
}

describe.each(usualEngine)('the export for a client on %s', (engine) => {
  let service: RunningService;
  let studio: SampleStudio;
  let treated: TreatedClient;
  let blend: BlendView;
  beforeAll(async () => {
    service = await startStudio(engine);
    studio = await makeSampleStudio(service);
    const { version } = await service.seen<StudioView>('');
    await service.patch('', { version, retentionPreset: 'Albuquerque', houseBlends: 'allowed' });
    treated = await makeTreatedClient(service, studio);
    const { clientId } = treated;
    const parents = [];
    for (const code of ['ROOT-1', 'ROOT-2']) {
      const line = await receive(service, studio, { productId: studio.umberId, code });
      await service.made(`/containers/${line.containers[0]?.id}/open`);
      parents.push({ containerId: line.containers[0]?.id, microlitres: 400 });
    }
    blend = await service.made<BlendView>('/blends', {
      productId: studio.thinnerId,
      placeId: studio.placeId,
      parents,
    });
    const liner = await receive(service, studio, { productId: studio.linerId, code: 'CL-9', quantity: 2 });
    const sessionId = await walkIn(service, studio, { clientId, visitKind: 'touch-up' });
    const umber = await receive(service, studio, {
      productId: studio.umberId,
      code: 'MIX-1',
      useBy: '2031-05-31',
    });
    await service.made(`/sessions/${sessionId}/scans`, { symbol: umber.containers[0]?.labelCode });
    await service.made(`/containers/${umber.containers[0]?.id}/open`).catch(() => undefined);
    const mix = await service.made<{ id: string }>(`/sessions/${sessionId}/mixes`, { label: 'base' });
    await service.made(`/sessions/${sessionId}/mixes/${mix.id}/components`, {
      containerId: umber.containers[0]?.id,
      drops: 3,
    });
    await service.made(`/sessions/${sessionId}/completion`, {
      lines: [],
      besides: [
        { containerId: blend.containerId, drops: 2, reason: 'the house brown' },
        { containerId: liner.containers[0]?.id, pieces: 1, reason: 'from the drawer' },
      ],
      complications: null,
      signedBy: studio.ownerId,
    });
    await service.made(`/clients/${clientId}/legal-claims`, { reason: 'claims a burn' });
    await service.made(`/clients/${clientId}/erasure`, { ground: 'objection' });
  });
  afterAll(() => service.dispose());

  const exported = () => service.seen<ClientExportView>(`/clients/${treated.clientId}/export`);

  // GDPR Art. 15(1) and (3) [P]: the personal data, and a copy of them.
  it('holds everything that is kept of them', async () => {
    const view = await exported();
    expect(view).toMatchObject({
      format: 'lotward client export',
      formatVersion: 1,
      studio: { id: service.studioId, timeZone: 'UTC' },
      client: {
        id: treated.clientId,
        reference: treated.reference,
        name: texts.name,
        contact: texts.contact,
        note: texts.note,
      },
      legalClaims: [{ reason: 'claims a burn', endedAt: null }],
      erasureAnswers: [{ answer: 'refused', ground: 'objection' }],
    });
    const all = JSON.stringify(view);
    for (const text of [...Object.values(texts), 'the second drop', 'the house brown', 'from the drawer']) {
      expect(all, text).toContain(text);
    }
    // GDPR Art. 15(1)(d) [P]: how long the data will be stored.
    const today = new Date().toISOString().slice(0, 10);
    expect(view.retention).toEqual({
      policy: { years: 3, law: 'rule of Albuquerque for body art' },
      lastRecordOn: today,
      keptThrough: expect.stringMatching(/^\d{4}-\d\d-\d\d$/),
    });
    expect(Number(view.retention.keptThrough?.slice(0, 4))).toBe(Number(today.slice(0, 4)) + 3);
  });

  it('holds every visit with its mixes and uses, each with maker, product, lot and use-by', async () => {
    const { sessions, blendedPigments } = await exported();
    expect(
      sessions.map(({ visitKind, artist, signedBy }) => [visitKind, artist.name, signedBy?.name]),
    ).toEqual([
      ['first session', 'Owner', 'Owner'],
      ['touch-up', 'Owner', 'Owner'],
    ]);
    expect(sessions[0]).toMatchObject({
      bodyPlaceDetail: texts.bodyPlaceDetail,
      complications: texts.complications,
      healedResult: { retainedColourPercent: 70, note: texts.healedNote },
    });
    expect(sessions[1]?.mixes).toMatchObject([
      { label: 'base', parts: [{ productName: 'Umber', drops: 3 }] },
    ]);
    const used = sessions[1]?.uses.map((use) => [
      use.makerName,
      use.productName,
      use.lotCode,
      use.useBy,
      use.pieces,
    ]);
    expect(used).toEqual(
      expect.arrayContaining([
        ['Halden Colour Works', 'Umber', 'MIX-1', '2031-05-31', 0],
        ['Halden Colour Works', 'Fine liner', 'CL-9', '2099-12-31', 1],
        ['Halden Colour Works', 'Thinner', blend.code, blend.useBy, 0],
      ]),
    );
    expect(blendedPigments).toMatchObject([{ lots: [{ lotCode: 'ROOT-1' }, { lotCode: 'ROOT-2' }] }]);
  });

  // ECJ C-579/21 [M]: when and why somebody looked is theirs to know, but not by which employee.
  it('says when and for what somebody looked, by role and not by name, this export included', async () => {
    const manager = await personOfRole(service, 'manager');
    await service.get(`/clients/${treated.clientId}`, { cookie: manager.cookie });
    const view = (
      await service.get<ClientExportView>(`/clients/${treated.clientId}/export`, {
        cookie: manager.cookie,
      })
    ).body;
    expect(view.accesses[0]).toEqual({
      accessedAt: expect.any(String),
      what: 'export',
      role: 'manager',
      personId: manager.personId,
    });
    expect(view.accesses.map(({ what }) => what)).toContain('client');
    expect(JSON.stringify(view.accesses)).not.toContain('Some manager');
  });

  // GDPR Art. 20(1) [P]: in a structured, commonly used and machine-readable format.
  it('is described field by field in the description of the API', async () => {
    const document = (await service.get<ApiDocument>(`${service.url}/api/openapi.json`)).body;
    const [, operations] =
      Object.entries(document.paths).find(([path]) => path.endsWith('/clients/{clientId}/export')) ?? [];
    const schema = operations?.get?.responses['200']?.content['application/json']?.schema;
    const view = await exported();
    expect(undescribed(document, schema ?? {}, view)).toEqual([]);
    // That the walk finds what is not described:
    expect(
      undescribed(document, schema ?? {}, { ...view, sessions: [{ ...view.sessions[0], mood: 'calm' }] }),
    ).toEqual(['$.sessions[0].mood is not described']);
  });

  it('is a page to read as well, in which texts are texts', async () => {
    const hostile = `<script>alert("&amp;")</script> O'Neill`;
    const { id } = await service.made<{ id: string }>('/clients', {
      name: hostile,
      note: '日本語 & ελληνικά',
    });
    const page = await service.get<string>(`/clients/${id}/export.html`);
    expect([page.status, page.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
    expect(page.headers.get('content-disposition')).toMatch(/^attachment; filename="client-[\w-]+\.html"$/);
    expect(page.body).not.toContain('<script');
    expect(page.body).toContain('&lt;script&gt;alert(&quot;&amp;amp;&quot;)&lt;/script&gt; O&#39;Neill');
    expect(page.body).toContain('日本語 &amp; ελληνικά');
    const full = (await service.get<string>(`/clients/${treated.clientId}/export.html`)).body;
    for (const text of [
      texts.name,
      texts.complications,
      texts.healedNote,
      'MIX-1',
      '2031-05-31',
      'ROOT-2',
      'claims a burn',
    ]) {
      expect(full, text).toContain(text);
    }
    expect(full).not.toContain('[object');
    expect(full).not.toContain('undefined');
  });

  it('is of a client of this studio', async () => {
    for (const path of ['export', 'export.html']) {
      const unknown = await service.get<ProblemBody>(`/clients/${studio.placeId}/${path}`);
      expect([unknown.status, unknown.body.code]).toEqual([404, 'not-found']);
    }
  });
});
