import { parse } from 'csv-parse/sync';
import { v7 as uuidv7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ApiDocument, type Schema } from '../support/api-document.js';
import { placedValues, placeName, withValue } from '../support/body-places.js';
import { pagesOf, textOn } from '../support/pdf-pages.js';
import { type ProblemBody, type RunningService, startService, strictestEngine } from '../support/service.js';
import { type WalkedStudio, walkStudio } from '../support/walk.js';
import type { SentRequest } from '../support/whole-life/recording-service.js';
import { markedTexts } from '../support/whole-life/texts.js';
import { liveWholeLife } from '../support/whole-life/whole-life.js';

const sqlText = "'; DROP TABLE person;--";
const htmlText = '<script>alert(1)</script>';
const formulaText = '=1+1;';
/** All three in one, as short as fields are: the sign of a formula has to come first, a quote and a tag do their work anywhere. */
const allInOne = `${formulaText}'--${htmlText}`;
/** In the soak each comes alone. */
const hostileTexts = process.env.SOAK ? [sqlText, htmlText, formulaText] : [allInOne];

/** Fields whose text is read by a rule, so that only some texts mean something. */
const readByRule = [
  'POST /products notation',
  'PATCH /products/{productId} notation',
  'POST /symbols/read text',
  'POST /blends useBy',
  'PUT /stock/levels subjectId',
  'POST /deliveries lines.*.symbol.text',
  'POST /bookings text',
  'POST /bookings/preview text',
  'POST /opening-stock text',
  'POST /opening-stock/preview text',
  'POST /recalls/files text',
  'PUT /procedures/{procedureId}/kit-list items.*.configuration',
  'POST /plans whatIf.itemKey',
  'PUT /planning-settings/items itemKey',
  'DELETE /planning-settings/items itemKey',
  'POST /alert-destinations/mail address',
  'POST /alert-destinations/webhooks url',
  'POST /alert-destinations/push endpoint',
  'POST /alert-destinations/push p256dh',
];

/** Asked of a chain manager only: an owner owns the added studio too. */
const unused = 'POST /chain/studios ownerName';

describe.each(strictestEngine)('hostile texts, on %s', { timeout: 300_000 }, (engine) => {
  let service: RunningService;
  let document: ApiDocument;
  let sent: SentRequest[];
  let walked: WalkedStudio;

  beforeAll(async () => {
    service = await startService(engine);
    document = await ApiDocument.of(service);
    sent = [];
    for (const text of hostileTexts) sent.push(...(await liveWholeLife(service, markedTexts(text))));
    walked = await walkStudio(service, document, { mostOfKind: 200 });
  }, 300_000);
  afterAll(() => service.dispose());

  /** Whether a place takes whatever a person writes. */
  const isFree = ({ type, format, enum: choices, pattern, minLength }: Schema) =>
    [type].flat().includes('string') && !format && !choices && !pattern && minLength !== undefined;

  it('are sent in every field of every write that takes a text', () => {
    const places = document.routes
      .filter(({ isOfStudio }) => isOfStudio)
      .flatMap((route) =>
        document
          .places(route)
          .filter(({ schema }) => isFree(schema))
          .map(({ at }) => `${route.name} ${at.join('.')}`),
      );
    const tried = new Map<string, Set<string>>();
    for (const { method, address, body } of sent) {
      const route = document.routeOf(method, address);
      for (const { at, value } of placedValues(body)) {
        const text = hostileTexts.find((each) => typeof value === 'string' && value.startsWith(each));
        if (route === undefined || text === undefined) continue;
        const place = `${route.name} ${placeName(at)}`;
        tried.set(place, (tried.get(place) ?? new Set()).add(text));
      }
    }
    expect(places.length).toBeGreaterThan(50);
    const untried = places.filter((place) => tried.get(place)?.size !== hostileTexts.length);
    expect(untried.sort()).toEqual([...readByRule].sort());
  });

  it('come back letter by letter', () => {
    const shown = [...sent.map(({ answer }) => answer), ...walked.answers.map(({ answer }) => answer)]
      .flatMap(({ body }) => placedValues(body).map(({ value }) => value))
      .filter((value) => typeof value === 'string');
    const all = shown.join('\n');
    const places = new Map<string, boolean>();
    for (const { method, address, body } of sent) {
      const route = document.routeOf(method, address);
      for (const { at, value } of placedValues(body)) {
        const text = hostileTexts.find((each) => typeof value === 'string' && value.startsWith(each));
        if (text === undefined) continue;
        const place = `${route?.name} ${placeName(at)} ${text}`;
        places.set(place, places.get(place) === true || all.includes(value as string));
      }
    }
    const lost = [...places].filter(([, isShown]) => !isShown).map(([place]) => place);
    expect(lost).toEqual(hostileTexts.map((text) => `${unused} ${text}`));
  });

  it.each(readByRule)('say nothing to the rule that reads %s', async (place) => {
    const [method = '', path = '', field = ''] = place.split(' ');
    const found = sent.flatMap((request) => {
      const isRoute = document.routeOf(request.method, request.address)?.name === `${method} ${path}`;
      const value = isRoute && placedValues(request.body).find(({ at }) => placeName(at) === field);
      return value ? [{ ...request, at: value.at }] : [];
    });
    const [request] = found;
    if (!request) throw new Error(`No request had ${field}.`);
    for (const text of hostileTexts) {
      const body = withValue(request.body, request.at, text) as object;
      const answer = await service.send<ProblemBody & { kind: string; usable: boolean }>(
        request.method,
        request.address,
        'id' in body ? { ...body, id: uuidv7() } : body,
      );
      // Reading a symbol answers what it is.
      if (path === '/symbols/read') expect(['invalid', 'text']).toContain(answer.body.kind);
      // What would become of a file is an answer, too.
      else if (path.endsWith('/preview')) expect(answer.body.usable).toBe(false);
      else expect([400, 404, 422]).toContain(answer.status);
    }
  });

  it('are printed on labels as they are', async () => {
    let printed = '';
    for (const { address, body } of sent.filter((request) => request.address.endsWith('/labels'))) {
      const response = await service.fetch(address, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      });
      printed += pagesOf(Buffer.from(await response.arrayBuffer()))
        .map(textOn)
        .join('\n');
    }
    for (const text of hostileTexts) expect(printed).toContain(text);
  });

  it('are run by no spreadsheet that opens an export', () => {
    const files = walked.answers.filter(({ answer }) =>
      answer.headers.get('content-type')?.startsWith('text/csv'),
    );
    const cells = files.flatMap(({ text }) => (parse(text, { bom: true }) as string[][]).flat());
    expect(cells.filter((cell) => /^\s*[=+@-]|^[\t\r\n]/.test(cell))).toEqual([]);
    // With the sign that takes the formula its meaning.
    for (const text of hostileTexts) {
      const written = text.startsWith('=') ? `'${text}` : text;
      expect(cells.some((cell) => cell.startsWith(written))).toBe(true);
    }
  });

  it('are no markup on a page that is handed out', () => {
    const pages = walked.answers.filter(({ answer }) =>
      answer.headers.get('content-type')?.startsWith('text/html'),
    );
    expect(pages.some(({ text }) => text.includes('&lt;script&gt;alert(1)&lt;/script&gt;'))).toBe(true);
    for (const { text } of pages) expect(text).not.toContain('<script>alert(1)');
  });
});
