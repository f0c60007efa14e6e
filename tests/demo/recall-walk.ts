import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RecallBalanceView } from '../../src/recalls/balance/recall-balance.views.js';
import type { ClosingView, ReadinessView } from '../../src/recalls/closing/closing.views.js';
import type {
  EffectivenessView,
  PreparedMessageView,
  RecipientPageView,
} from '../../src/recalls/contacts/contacts.views.js';
import type { RecallContainerPageView } from '../../src/recalls/containers/recall-containers.views.js';
import type { ExposedClientPageView } from '../../src/recalls/exposures/exposures.views.js';
import type { NoticeReadingView, OpenedRecallView, RecallView } from '../../src/recalls/recalls.views.js';
import type { RunningService } from '../support/service.js';
import type { InventedStudio } from './invented-studio.js';
import type { Narrator } from './narrator.js';

const notice = `Product safety recall
Halden Colour Works recalls the brow pigment below, reference HCW-2026-07.

Product: Brow pigment
Shade: Warm umber
Lots: HU-118 and HU-119

Risk: microbial contamination was found in bottles of these lots. Infection of the treated skin is possible.
Stop using the product at once and set it aside. Send it back to us, we replace it free of charge.`;

/** Plays a recall from the pasted notice to the closed report, as whoever answers it would. */
export async function walkRecall(
  service: RunningService,
  studio: InventedStudio,
  narrator: Narrator,
): Promise<void> {
  narrator.step('A maker recalls a lot: the notice is pasted and read');
  const startedAt = performance.now();
  const reading = await service.made<NoticeReadingView>('/recalls/readings', { id: undefined, text: notice });
  for (const { kind, value } of reading.parts) narrator.say(`${kind}: ${value}`);
  const [met] = reading.matches.items;
  narrator.expect(
    reading.matches.certainLots === 1 && met?.code === 'HU-118',
    'it means one lot that was ever here: HU-118; HU-119 never arrived',
  );

  narrator.step('The recall is opened: the lot is on hold within the same second');
  const { id } = await service.made<OpenedRecallView>('/recalls', {
    title: 'Warm umber of Halden Colour Works',
    notice: { source: 'pasted', text: notice },
    ...statedIn(reading),
  });
  const seconds = (performance.now() - startedAt) / 1_000;
  const recall = await service.seen<RecallView>(`/recalls/${id}`);
  narrator.expect(
    recall.heldLots === 1 && recall.standingHold && seconds < 2,
    `one lot held, and whatever arrives of both lots from now on; ${seconds.toFixed(2)} s from the pasted text`,
  );

  narrator.step('Who had it');
  const exposed = await service.seen<ExposedClientPageView>(`/recalls/${id}/exposed-clients`);
  for (const { clientReference, certainty, sessions, lastDay } of exposed.items) {
    narrator.say(`${clientReference}: ${certainty}, ${sessions} session(s), last on ${lastDay}`);
  }
  narrator.expect(exposed.totals.certainClients === 2, 'two clients, both for certain');
  const spreadsheet = await service.fetch(`${service.studio}/recalls/${id}/exposures.xlsx`);
  const sheetFile = join(service.dataFolder, 'exposures.xlsx');
  writeFileSync(sheetFile, Buffer.from(await spreadsheet.arrayBuffer()));
  narrator.expect(spreadsheet.status === 200, `the same as a spreadsheet: ${sheetFile}`);

  narrator.step('Every bottle of it is found, tagged and put aside');
  await findContainers(service, id, narrator);

  narrator.step('Everybody concerned is told; Lotward prepares the words and sends nothing');
  await tellEverybody(service, id, narrator);

  narrator.step('What is left goes back to the maker, with a witness');
  await disposeOfAll(service, studio, id);
  const balance = await service.seen<RecallBalanceView>(`/recalls/${id}/balance`);
  const { cameIn, balancedPercent } = balance.totals;
  narrator.expect(
    balancedPercent === 100,
    `the balance adds up: ${cameIn.pieces} bottles came in, ${balancedPercent} % are explained`,
  );

  narrator.step('The recall is closed, with a report');
  const readiness = await service.seen<ReadinessView>(`/recalls/${id}/readiness`);
  for (const { words } of readiness.obstacles) narrator.say(words);
  narrator.expect(readiness.ready, 'nothing stands against closing');
  const [owner] = (await service.seen<{ id: string; role: string }[]>('/people')).filter(
    ({ role }) => role === 'owner',
  );
  const closing = await service.made<ClosingView>(`/recalls/${id}/closing`, {
    signedBy: owner?.id,
    secondSignedBy: studio.artistId,
    overrides: [],
  });
  const report = await service.fetch(`${service.studio}/recalls/${id}/report.pdf`);
  const file = Buffer.from(await report.arrayBuffer());
  const reportFile = join(service.dataFolder, 'recall.pdf');
  writeFileSync(reportFile, file);
  narrator.expect(
    closing.outcome === 'closed' && file.subarray(0, 5).toString() === '%PDF-',
    `closed and signed by two; the report: ${reportFile}`,
  );
}

/** What the notice was read as, as a request says it: nothing where nothing was read. */
function statedIn({ scope, reference, risk, remedy }: NoticeReadingView): object {
  const said = <Value>(value: Value | null) => value ?? undefined;
  return {
    reference: said(reference),
    risk: said(risk),
    remedy: said(remedy),
    issuer: 'Halden Colour Works',
    scope: {
      items: scope.items.map(({ makerName, productName, shade, lots, ...item }) => ({
        ...item,
        makerName: said(makerName),
        productName: said(productName),
        shade: said(shade),
        lots: lots.map(({ useBy, ...term }) => ({ ...term, useBy: said(useBy ?? null) })),
      })),
    },
  };
}

async function findContainers(service: RunningService, id: string, narrator: Narrator): Promise<void> {
  const { id: placeId } = await service.made<{ id: string }>('/places', {
    name: 'Recall box',
    kind: 'set aside',
  });
  const { items } = await service.seen<RecallContainerPageView>(`/recalls/${id}/containers`);
  for (const { containerId, labelCode, placeName, standing } of items) {
    if (standing !== 'not looked for') continue;
    narrator.say(`${labelCode}, ${placeName}: found and put into the recall box`);
    await service.made(`/recalls/${id}/containers/${containerId}/findings`, {
      result: 'found',
      placeId,
      tag: 'RECALL HCW-2026-07',
    });
  }
  const { totals } = await service.seen<RecallContainerPageView>(`/recalls/${id}/containers`);
  narrator.expect(
    totals.found > 0 && totals.notLookedFor === 0 && totals.notFound === 0,
    `${totals.found} bottles found, none missing`,
  );
}

async function tellEverybody(service: RunningService, id: string, narrator: Narrator): Promise<void> {
  for (const audience of ['client', 'artist', 'supplier'] as const) {
    const { items } = await service.seen<RecipientPageView>(`/recalls/${id}/recipients?audience=${audience}`);
    for (const [index, { clientId, artistId, company }] of items.entries()) {
      const whom = audience === 'client' ? { clientId } : audience === 'artist' ? { artistId } : { company };
      if (audience === 'client' && index === 0) {
        const message = await service.seen<PreparedMessageView>(
          `/recalls/${id}/messages?audience=client&clientId=${clientId}`,
        );
        narrator.say(message.heading);
        for (const { text } of message.body) narrator.say(`  ${text}`);
        narrator.expect(
          message.lots.every(({ code }) => code === 'HU-118') && message.lots.length === 1,
          'the message names the lot that touched this client, and no other',
        );
      }
      await service.made(`/recalls/${id}/contacts`, {
        audience,
        ...whom,
        channel: 'telephone',
        outcome: 'reached',
      });
    }
  }
  const effectiveness = await service.seen<EffectivenessView>(`/recalls/${id}/effectiveness`);
  narrator.expect(
    effectiveness.toldPercent === 100,
    `${effectiveness.told} of ${effectiveness.toTell} were told: ${effectiveness.toldPercent} %, level ${effectiveness.met}`,
  );
}

async function disposeOfAll(service: RunningService, studio: InventedStudio, id: string): Promise<void> {
  const { items } = await service.seen<RecallContainerPageView>(`/recalls/${id}/containers?standing=found`);
  for (const { containerId } of items) {
    await service.made(`/recalls/${id}/containers/${containerId}/dispositions`, {
      kind: 'returned',
      witnessId: studio.artistId,
      reference: 'Parcel 7741',
    });
  }
}
