import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Temporal } from 'temporal-polyfill';
import type { AlertPageView } from '../../src/alerts/alerts.views.js';
import { alertWords } from '../../src/alerts/channels/alert-words.js';
import { productLabel } from '../../src/catalogue/product-label.js';
import type { CompletionView } from '../../src/sessions/completion.views.js';
import type { MixView } from '../../src/sessions/mixes.views.js';
import type { TouchUpView } from '../../src/sessions/touch-up.views.js';
import type { TraceView } from '../../src/sessions/trace.views.js';
import type { ScanView, TrayView } from '../../src/sessions/tray.views.js';
import type { ReceiptView } from '../../src/stock/receiving.views.js';
import { type RunningService, startService, testOwner } from '../support/service.js';
import { walkAlerts } from './alert-walk.js';
import { gtins, type InventedStudio, makeInventedStudio } from './invented-studio.js';
import { Narrator } from './narrator.js';
import { walkPlan } from './plan-walk.js';
import { walkRecall } from './recall-walk.js';
import { decodeSymbol, type ReadSymbol, renderSymbol, type Symbology } from './symbols.js';

/** With --keep and a folder what the walk leaves there stays, with the whole log, to be looked at. */
const { values: given } = parseArgs({ options: { once: { type: 'boolean' }, keep: { type: 'string' } } });
const once = given.once === true;
const narrator = new Narrator();
const day = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString();
/** A day from now on the studio's calendar. */
const date = (days: number) => Temporal.Now.plainDateISO('Europe/Vienna').add({ days }).toString();
const gs1Date = (days: number) => date(days).slice(2).replaceAll('-', '');

/** Plays the main job against the running service, as its users would. */
async function walk(service: RunningService): Promise<void> {
  narrator.step('An empty studio gets its people, products, places and a kit list');
  const studio = await makeInventedStudio(service);
  narrator.say('Studio Larkmoor: one artist, two makers, seven products, powdered brows and eyeliner.');

  narrator.step('A delivery arrives; its symbols are drawn as pictures and read back from them');
  const delivery = await receiveDelivery(service, studio);

  narrator.step('Opening stock: what stood on the shelf before');
  const old = await receiveOpeningStock(service, studio);

  narrator.step('Labels for the bottles and boxes');
  await printLabels(service, delivery);

  narrator.step('A client walks in for powdered brows; the artist lays out the tray by scanning');
  const ida = await service.made<{ id: string }>('/clients', {
    name: 'Ida Sommer',
    contact: '+43 1 5550100',
  });
  const first = await walkIn(service, studio, ida.id, studio.brows);
  const lines = await layOutTray(service, first, delivery);

  narrator.step('What may not be used is refused, with the reason and what to take instead');
  await showRefusals(service, first, old, delivery);

  narrator.step('Two shades and a thinner are dropped into one cup');
  await mix(service, first, delivery);

  narrator.step('The session is completed: what was used, what was opened and not used, the sign-off');
  await complete(service, studio, first, lines);

  narrator.step('A second client, eyeliner, with the same bottle');
  const nora = await service.made<{ id: string }>('/clients', { name: 'Nora Vale' });
  const second = await walkIn(service, studio, nora.id, studio.eyeliner);
  await scan(service, second, { symbol: labelOf(delivery, 1) });
  const cup = await service.made<MixView>(`/sessions/${second}/mixes`, { label: 'line' });
  await drop(service, second, cup.id, delivery, 1, 2);
  await service.made(`/sessions/${second}/completion`, {
    lines: [],
    complications: null,
    signedBy: studio.artistId,
  });
  narrator.say('Completed with two drops of the same umber.');

  narrator.step('The touch-up: what the first visit took, and whether it will still be in date');
  await showTouchUp(service, first);

  narrator.step('One question: who had this lot?');
  await trace(service, delivery);

  narrator.step('The alerts that opened');
  await listAlerts(service);

  await walkRecall(service, studio, narrator);

  await walkPlan(service, studio, narrator);

  await walkAlerts(narrator);
}

/** Draws a symbol, reads it back from the picture, and keeps the picture beside the data. */
async function drawn(
  service: RunningService,
  name: string,
  symbology: Symbology,
  content: string,
): Promise<ReadSymbol> {
  const picture = await renderSymbol(symbology, content);
  const folder = join(service.dataFolder, 'symbols');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${name}.png`), picture);
  const read = await decodeSymbol(picture);
  narrator.say(
    `${name}: drawn as ${symbology}, read back as ${read.symbologyIdentifier} ${shown(read.text)}`,
  );
  return read;
}

const shown = (text: string) => text.replaceAll('\u001d', '␝');

async function receiveDelivery(service: RunningService, studio: InventedStudio): Promise<ReceiptView> {
  const box = await drawn(
    service,
    'box of 20 liner cartridges',
    'gs1datamatrix',
    `(01)${gtins.linerBox}(17)${gs1Date(700)}(10)CL-2041`,
  );
  const umber = await drawn(
    service,
    'warm umber',
    'gs1-128',
    `(01)${gtins.umber}(17)${gs1Date(500)}(10)HU-118`,
  );
  const ash = await drawn(
    service,
    'cool ash',
    'qrcode',
    `https://id.example.org/01/${gtins.ash}/10/HA-77?17=${gs1Date(200)}`,
  );
  const thinner = await drawn(service, 'thinner', 'ean13', gtins.thinner.slice(1));
  narrator.say('The thinner’s symbol names the product only: its lot is typed from the label.');
  const receipt = await service.made<ReceiptView>('/deliveries', {
    origin: 'purchase',
    supplierId: studio.supplierId,
    orderedOn: date(-6),
    reference: 'FR-20417',
    lines: [
      { symbol: box, quantity: 1, unitCostMinor: 95, placeId: studio.placeId },
      { symbol: umber, quantity: 2, unitCostMinor: 2_490, placeId: studio.placeId },
      { symbol: ash, quantity: 1, unitCostMinor: 2_490, placeId: studio.placeId },
      {
        symbol: thinner,
        codes: [{ kind: 'lot', code: 'HT 5' }],
        useBy: date(400).slice(0, 7),
        quantity: 1,
        placeId: studio.placeId,
      },
      {
        productId: studio.magnum,
        codes: [{ kind: 'lot', code: 'CM-9' }],
        useBy: date(600),
        quantity: 10,
        placeId: studio.placeId,
      },
      {
        productId: studio.gel,
        codes: [{ kind: 'lot', code: 'NG-3' }],
        useBy: date(300),
        quantity: 1,
        placeId: studio.placeId,
      },
    ],
  });
  const [liner, bottles] = receipt.lines;
  narrator.expect(
    liner?.quantityPieces === 20 && liner.lot.code === 'CL-2041',
    'one scanned box counts as 20 pieces of lot CL-2041',
  );
  narrator.expect(
    bottles?.containers.length === 2 && bottles.lot.useBy === date(500),
    `two bottles of lot HU-118, use-by ${date(500)}`,
  );
  narrator.expect(
    receipt.lines[2]?.lot.code === 'HA-77' && receipt.lines[3]?.lot.code === 'HT 5',
    'lot HA-77 came from the link in the QR symbol, lot HT 5 was typed',
  );
  for (const line of [1, 2, 3, 5]) {
    const bottle = receipt.lines[line]?.containers[0];
    await service.made(`/containers/${bottle?.id}/open`, {});
  }
  narrator.say('One bottle of each pigment, the thinner and the gel are opened today.');
  return receipt;
}

async function receiveOpeningStock(service: RunningService, studio: InventedStudio): Promise<ReceiptView> {
  const receipt = await service.made<ReceiptView>('/deliveries', {
    origin: 'opening stock',
    lines: [
      {
        productId: studio.umber,
        codes: [{ kind: 'lot', code: 'HU-090' }],
        useBy: date(-40),
        quantity: 1,
        placeId: studio.placeId,
      },
      {
        productId: studio.umber,
        codes: [{ kind: 'lot', code: 'HU-101' }],
        useBy: date(250),
        quantity: 1,
        openedAt: day(-420),
        placeId: studio.placeId,
      },
      {
        productId: studio.ash,
        codes: [{ kind: 'lot', code: 'HA-60' }],
        useBy: date(300),
        quantity: 1,
        placeId: studio.placeId,
      },
      {
        productId: studio.singlePoint,
        codeState: 'none printed',
        useBy: date(600),
        quantity: 5,
        placeId: studio.placeId,
      },
    ],
  });
  const [expired, , doubtful, unlabelled] = receipt.lines;
  narrator.expect(
    expired?.holds.some((hold) => hold.reason === 'already past') === true,
    'a bottle past its use-by is received on hold',
  );
  narrator.expect(
    unlabelled?.holds.some((hold) => hold.reason === 'no lot printed') === true,
    'cartridges without a printed lot are received on hold',
  );
  for (const hold of expired?.holds ?? []) {
    await service.made(`/holds/${hold.id}/release`, {
      reason: 'Looked at: kept to show that its date is judged too.',
    });
  }
  await service.made('/holds', {
    kind: 'quarantine',
    reason: 'doubt',
    note: 'The cap was loose.',
    lotId: doubtful?.lot.id,
  });
  narrator.say('Lot HA-60 is put on hold by hand: its cap was loose.');
  return receipt;
}

async function printLabels(service: RunningService, delivery: ReceiptView): Promise<void> {
  const containerIds = delivery.lines.flatMap((line) => line.containers.map((container) => container.id));
  const response = await service.fetch(`${service.studio}/labels`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ containerIds, sheet: 'roll' }),
  });
  const pdf = Buffer.from(await response.arrayBuffer());
  writeFileSync(join(service.dataFolder, 'labels.pdf'), pdf);
  narrator.expect(
    response.status < 300 && pdf.subarray(0, 5).toString() === '%PDF-',
    `${containerIds.length} labels on a roll: ${join(service.dataFolder, 'labels.pdf')}`,
  );
}

async function walkIn(
  service: RunningService,
  studio: InventedStudio,
  clientId: string,
  procedureId: string,
): Promise<string> {
  const session = await service.made<{ id: string }>('/sessions/walk-in', {
    clientId,
    artistId: studio.artistId,
    procedureId,
    visitKind: 'first session',
  });
  return session.id;
}

const labelOf = (receipt: ReceiptView, line: number) => receipt.lines[line]?.containers[0]?.labelCode ?? '';

function scan(service: RunningService, sessionId: string, body: object): Promise<ScanView> {
  return service.made<ScanView>(`/sessions/${sessionId}/scans`, body);
}

function told(answer: ScanView): string {
  const reasons = answer.reasons.map((reason) => reason.message).join(' ');
  return `${answer.verdict.toUpperCase()}  ${answer.thing?.label ?? ''}${reasons === '' ? '' : ` – ${reasons}`}`;
}

async function layOutTray(
  service: RunningService,
  sessionId: string,
  delivery: ReceiptView,
): Promise<Map<string, ScanView>> {
  const lines = new Map<string, ScanView>();
  const blister = await drawn(
    service,
    'blister of a liner cartridge',
    'gs1datamatrix',
    `(01)${gtins.liner}(17)${gs1Date(700)}(10)CL-2041`,
  );
  const show = async (name: string, body: object) => {
    const answer = await scan(service, sessionId, body);
    narrator.say(told(answer));
    lines.set(name, answer);
    return answer;
  };
  const symbol = { symbol: blister.text, symbologyIdentifier: blister.symbologyIdentifier };
  await show('liner', symbol);
  const asked = await show('asked', symbol);
  narrator.expect(asked.verdict === 'question', 'the same symbol shown again asks: another one?');
  await show('spare liner', { ...symbol, another: true });
  await show('magnum', { symbol: labelOf(delivery, 4) });
  await show('umber', { symbol: labelOf(delivery, 1) });
  await show('ash', { symbol: labelOf(delivery, 2) });
  await show('thinner', { symbol: labelOf(delivery, 3) });
  await show('gel', { symbol: labelOf(delivery, 5) });
  const tray = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
  narrator.expect(
    tray.lines.length === 7,
    'seven things lie on the tray: three cartridges of two configurations, three bottles, a gel',
  );
  narrator.expect(tray.lacking.length === 0, 'nothing of the kit list is missing');
  return lines;
}

async function showRefusals(
  service: RunningService,
  sessionId: string,
  old: ReceiptView,
  delivery: ReceiptView,
): Promise<void> {
  for (const [line, code, what] of [
    [0, 'expired', 'the expired bottle is refused'],
    [1, 'open too long', 'the bottle open too long is refused'],
    [2, 'on hold', 'the lot on hold is refused'],
  ] as const) {
    const answer = await scan(service, sessionId, { symbol: labelOf(old, line) });
    narrator.say(told(answer));
    const offered = answer.instead && delivery.lines.some(({ lot }) => lot.id === answer.instead?.lotId);
    narrator.expect(
      answer.verdict === 'refused' && answer.reasons[0]?.code === code && offered === true,
      `${what}, and another one is named`,
    );
  }
}

async function drop(
  service: RunningService,
  sessionId: string,
  mixId: string,
  delivery: ReceiptView,
  line: number,
  drops: number,
): Promise<MixView> {
  return service.made<MixView>(`/sessions/${sessionId}/mixes/${mixId}/components`, {
    containerId: delivery.lines[line]?.containers[0]?.id,
    drops,
  });
}

async function mix(service: RunningService, sessionId: string, delivery: ReceiptView): Promise<void> {
  const cup = await service.made<MixView>(`/sessions/${sessionId}/mixes`, { label: 'base' });
  await drop(service, sessionId, cup.id, delivery, 1, 5);
  await drop(service, sessionId, cup.id, delivery, 2, 1);
  const full = await drop(service, sessionId, cup.id, delivery, 3, 1);
  for (const part of full.parts) {
    narrator.say(
      `${part.drops} ${part.drops === 1 ? 'drop' : 'drops'} of ${productLabel(part)}, lot ${part.lotCode} (about ${part.microlitres} µL)`,
    );
  }
  narrator.expect(
    full.microlitres === 290,
    'the cup holds about 290 µL: drops of 40 µL where known, else the assumed 50 µL',
  );
}

async function complete(
  service: RunningService,
  studio: InventedStudio,
  sessionId: string,
  lines: ReadonlyMap<string, ScanView>,
): Promise<void> {
  const completed = await service.made<CompletionView>(`/sessions/${sessionId}/completion`, {
    lines: [
      { trayLineId: lines.get('spare liner')?.trayLineId, outcome: 'opened unused' },
      {
        trayLineId: lines.get('gel')?.trayLineId,
        outcome: 'used',
        appliedAt: day(-0.03),
        removedAt: day(-0.01),
        appliedBy: studio.artistId,
      },
    ],
    complications: 'slight redness, gone within the hour',
    signedBy: studio.artistId,
  });
  narrator.expect(
    completed.uses.length === 6,
    'six uses are booked: two cartridges, three shares of the cup, the gel',
  );
  narrator.expect(
    completed.wastedPieces === 1,
    'the spare liner was opened and not used: wasted, for the sharps container',
  );
}

async function showTouchUp(service: RunningService, sessionId: string): Promise<void> {
  const touchUp = await service.seen<TouchUpView>(`/sessions/${sessionId}/touch-up`);
  narrator.say(`Window: ${touchUp.window.opensOn} to ${touchUp.window.closesOn}.`);
  const parts = touchUp.mixes.flatMap((one) => one.parts);
  for (const part of parts) {
    const life = part.openedLifeFrom === 'assumed' ? ', by an opened life the studio assumes' : '';
    narrator.say(
      `${[part.productName, part.shade ?? ''].join(' ').trim()}, lot ${part.lotCode}: usable through ${part.lastDay}${life}; at the start of the window: ${part.usableAtStart}, at its end: ${part.usableAtEnd}`,
    );
  }
  narrator.expect(touchUp.window.opensOn === date(30), 'the window opens 30 days after the first session');
  narrator.expect(parts.length === 3, 'the mix is remembered with its three parts');
}

async function trace(service: RunningService, delivery: ReceiptView): Promise<void> {
  const lotId = delivery.lines[1]?.lot.id;
  const answer = await service.seen<TraceView>(`/lots/${lotId}/trace`);
  for (const use of answer.items) {
    narrator.say(
      `${use.occurredAt.slice(0, 16)}Z  client ${use.clientReference}, ${use.procedureName} (${use.visitKind}), about ${use.microlitres} µL of lot ${use.lotCode}, known by ${use.knownBy}${use.through.length > 0 ? `, through a ${use.through.join(' and a ')}` : ''}`,
    );
  }
  narrator.expect(
    answer.totals.clients === 2 && answer.totals.sessions === 2,
    'lot HU-118 touched two clients in two sessions',
  );
  const csv = await service.get<string>(`/lots/${lotId}/trace.csv`);
  narrator.expect(
    csv.status === 200 && csv.body.trim().split('\n').length === 3,
    'the same as CSV: a head and two lines',
  );
}

async function listAlerts(service: RunningService): Promise<void> {
  const { items: alerts } = await service.seen<AlertPageView>('/alerts?limit=200');
  for (const alert of alerts) {
    narrator.say(
      alertWords({ event: 'opened', kind: alert.kind, severity: alert.severity, facts: alert.facts }),
    );
  }
  const kinds = new Set(alerts.map((alert) => alert.kind));
  narrator.expect(kinds.has('low stock'), 'low stock: the liner fell below its level of 20');
  narrator.expect(kinds.has('expired on the shelf'), 'expired on the shelf: lots HU-090 and HU-101');
}

const dataFolder = given.keep ?? mkdtempSync(join(tmpdir(), 'lotward-demo-'));
const port = once ? '0' : (process.env.PORT ?? '3000');
const databaseUrl = process.env.DATABASE_URL;
const service = await startService(databaseUrl === undefined ? 'sqlite' : 'postgres', {
  dataFolder,
  ...(databaseUrl !== undefined && { databaseUrl }),
  environment: { PORT: port, LOG_LEVEL: given.keep === undefined ? 'error' : 'debug' },
});
const end = async (code: number) => {
  await service.stop();
  if (given.keep === undefined) rmSync(dataFolder, { recursive: true, force: true });
  else writeFileSync(join(dataFolder, 'service.log'), service.log.join(''));
  process.exit(code);
};
process.once('SIGINT', () => void end(0));
process.once('SIGTERM', () => void end(0));
try {
  await walk(service);
} catch (error) {
  narrator.expect(false, error instanceof Error ? error.message : String(error));
}
if (narrator.failures > 0) {
  process.stdout.write(`\n${narrator.failures} things did not come out as expected.\n`);
  await end(1);
}
process.stdout.write('\nEvery step came out as expected.\n');
if (once) await end(0);
process.stdout.write(
  `\nThe service keeps running on ${service.url}\n  Sign in as:       ${testOwner.signInName}, password: ${testOwner.password}\n  API description:  ${service.url}/api/docs\n  The demo studio:  ${service.studio}\n  Throwaway data:   ${dataFolder}\nStop it with Ctrl-C.\n`,
);
