import { writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pagesOf, textOn } from '../../../tests/support/pdf-pages.js';
import type { RecallReportView } from './recall-report.views.js';
import { mostRowsDrawn, ReportDrawing } from './report-drawing.service.js';

const ann = '019a0000-0000-7000-8000-000000000001';
const at = '2026-03-01T09:30:00.000Z';

/** A report of a closed recall with so many exposures. */
function report(exposures: number, fields: Partial<RecallReportView> = {}): RecallReportView {
  const lot = { lotId: 'l1', lotCode: '07110002', productName: 'Umber', shade: 'Warm 02' };
  return {
    drawnAt: at,
    studio: { id: 's', name: 'Studio Nordlicht', timeZone: 'Europe/Vienna' },
    recall: {
      ...{ id: '019a0000-0000-7000-8000-0000000000aa', title: 'Umber of Halden, lots 07110002 to 07110009' },
      ...{ kind: 'recall', state: 'closed', chainWide: false, openedAt: at, openedBy: ann, endedAt: at },
    },
    scopes: [
      {
        ...{ number: 1, recordedAt: at, personId: ann, reason: null, issuer: 'Halden Colour Works' },
        ...{ reference: 'HCW 2026/14', issuedOn: '2026-02-27', classification: 'Class II' },
        risk: 'Bacteria were found in closed bottles. They may lead to infections of the skin. '.repeat(6),
        remedy: 'Stop using the product and send it back. Its price is paid back.',
        ...{ noticeSource: 'pasted', noticeDigest: 'ab'.repeat(32) },
        words: ['Umber Warm 02 by Halden Colour Works: lots 07110002 through 07110009.'],
      },
    ],
    timeline: Array.from({ length: 12 }, (_, index) => ({
      ...{ at: `2026-03-${String(index + 1).padStart(2, '0')}T10:00:00.000Z`, event: 'told', personId: ann },
      words: `${index + 2} attempts to tell somebody: ${index} client reached, 2 client no answer.`,
    })),
    lots: [
      {
        ...{ lotId: 'l1', makerName: 'Halden Colour Works', productName: 'Umber', shade: 'Warm 02' },
        ...{ code: '07110002', useBy: '2027-10-31', grade: 'certain', standing: 'affected', decision: null },
        reasons: ['The product is the one that was chosen.', 'The lot code is the same.'],
      },
      {
        ...{ lotId: 'l2', makerName: 'Halden Colour Works', productName: 'Umber', shade: 'Warm 02' },
        ...{ code: '0711 0002', useBy: null, grade: 'possible', standing: 'not affected' },
        reasons: ['The lot code differs by spaces.'],
        decision: { decision: 'not affected', reason: 'The box says 2024.', at, personId: ann },
      },
    ],
    exposures: {
      ...{ clients: exposures, certainClients: exposures, sessions: exposures, certainSessions: exposures },
      ...{ reversedUses: 2, leftOut: 0 },
      items: Array.from({ length: exposures }, (_, index) => ({
        ...{ clientId: `c${index}`, clientReference: `R${String(index).padStart(5, '0')}`, sessionId: 's' },
        ...{ day: '2026-01-15', visitKind: 'first session', bodyPlace: 'brows', certainty: 'certain' },
        ...{ ...lot, as: index % 9 === 0 ? 'house blend' : 'itself' },
      })),
    },
    contacts: {
      counts: [
        { audience: 'client', outcome: 'reached', attempts: 31 },
        { audience: 'supplier', outcome: 'reached', attempts: 1 },
      ],
      clients: Array.from({ length: Math.min(exposures, 30) }, (_, index) => ({
        ...{ clientId: `c${index}`, clientReference: `R${String(index).padStart(5, '0')}`, erased: false },
        ...{ certainty: 'certain', attempts: 2, standing: 'reached', lastAt: at },
      })),
      leftOut: 0,
    },
    balance: [
      {
        ...{ lotId: 'l1', code: '07110002', productName: 'Umber', shade: 'Warm 02', isBlend: false },
        ...{ standing: 'affected', cameInPieces: 12, usedPieces: 0, emptiedPieces: 6, blendedPieces: 1 },
        ...{ wastedPieces: 1, returnedPieces: 2, transferredOutPieces: 0, foundPieces: 1, onHandPieces: 2 },
        ...{ notAccountedPieces: 1, cameInMicrolitres: 120_000, usedMicrolitres: 61_000 },
        ...{ onHandMicrolitres: 18_500, balancedPercent: 91 },
        unexplained: [{ reason: 'not found', pieces: 1, microlitres: 8_000 }],
      },
    ],
    containers: [
      {
        ...{ containerId: 'k1', labelCode: '7KQ2M4XYZAB1', lotId: 'l1', lotCode: '07110002' },
        ...{ productName: 'Umber', form: 'bottle', standing: 'disposed', pieces: 0 },
        ...{ foundAt: at, personId: ann, tag: 'red 14' },
      },
    ],
    dispositions: [
      {
        ...{ containerId: 'k1', labelCode: '7KQ2M4XYZAB1', lotId: 'l1', kind: 'returned', pieces: 2 },
        ...{
          microlitres: 20_000,
          reference: 'consignment 8812',
          witnessId: null,
          photoId: 'p',
          at,
          personId: ann,
        },
      },
    ],
    figures: {
      lots: { affected: 1, notAffected: 1, undecided: 0 },
      clients: {
        ...{ exposed: exposures, reached: exposures, refused: 0, unreachable: 0 },
        ...{ triedInVain: 0, notTried: 0, erased: 0 },
      },
      containers: { toFind: 4, found: 3, notFound: 1, notLookedFor: 0 },
      remaining: { containers: 1, pieces: 1, microlitres: 9_000 },
      balance: { lots: 1, pieces: 12, missingPieces: 1, unexplainedPieces: 0 },
    },
    obstacles: [
      {
        ...{ obstacle: 'containers not found', count: 1, of: 4, counts: [] },
        words: '1 of 4 containers are not found: 0 not looked for yet, 1 looked for in vain.',
      },
    ],
    closing: {
      ...{ outcome: 'closed', reason: null, at, signedBy: ann, secondSignedBy: null },
      overrides: [
        {
          obstacle: 'containers not found',
          reason: 'The bottle was lost at the fair in January; all stands were asked.',
        },
      ],
    },
    steps: [],
    score: null,
    people: [{ id: ann, name: 'Ann Ärmel' }],
    ...fields,
  };
}

const drill: Partial<RecallReportView> = {
  recall: { ...report(0).recall, kind: 'drill', title: 'Drill: Umber Warm 02, lot 07110002' },
  score: { tracedPercent: 98.7, balancedPercent: 100, foundPercent: null, minutes: 41.3 },
  steps: [{ step: 'notice read', doneAt: at, minutes: 2.4, personId: ann }],
};

async function textsOf(given: RecallReportView): Promise<string[]> {
  const pdf = await new ReportDrawing().draw(given);
  if (process.env.KEEP_REPORTS)
    writeFileSync(
      `${process.env.KEEP_REPORTS}/${given.recall.kind}-${given.recall.state}-${given.exposures.clients}.pdf`,
      pdf,
    );
  return pagesOf(pdf).map(textOn);
}

describe('the document of a recall', () => {
  it('names studio and recall on each page, with its number of all', async () => {
    const pages = await textsOf(report(120));
    expect(pages.length).toBeGreaterThan(3);
    for (const [index, text] of pages.entries()) {
      expect(text).toContain('Studio Nordlicht \u00b7 Umber of Halden');
      expect(text).toContain(`Page ${index + 1} of ${pages.length}`);
      expect(text).not.toContain('Drill');
    }
  });

  it('says on each page of a drill that nothing was held and nobody was told', async () => {
    const pages = await textsOf(report(60, drill));
    expect(pages.length).toBeGreaterThan(2);
    for (const text of pages) expect(text).toContain('Drill: nothing was held, nobody was told');
    expect(pages.join('\n')).toContain('98.7 %');
  });

  it('says on each page of a withdrawn and of an open one how it stands', async () => {
    const { recall } = report(0);
    const open = await textsOf(
      report(40, { recall: { ...recall, state: 'open', endedAt: null }, closing: null }),
    );
    for (const text of open) expect(text).toContain('not closed');
    expect(open.join('\n')).toContain('Not closed yet.');
    const withdrawn = await textsOf(report(40, { recall: { ...recall, state: 'withdrawn' } }));
    for (const text of withdrawn) expect(text).toContain('withdrawn');
  });

  it('lists no more than it can hold, says how many there are, and has every row whole on one page', async () => {
    const pages = await textsOf(report(mostRowsDrawn + 250));
    const whole = pages.join('\n');
    expect(whole).toContain(`The first ${mostRowsDrawn} of ${mostRowsDrawn + 250} exposures are listed here`);
    expect(whole.match(/^07110002$/gm)?.length).toBeGreaterThanOrEqual(mostRowsDrawn);
    for (const text of pages) {
      const rows = text.match(/^R\d{5}$/gm)?.length ?? 0;
      const days = text.match(/^2026-01-15$/gm)?.length ?? 0;
      if (days > 0) expect(rows).toBeGreaterThanOrEqual(days);
    }
  });

  it('draws nothing outside the margins, however long a text without a space is', async () => {
    const [scope] = report(0).scopes;
    const pdf = await new ReportDrawing().draw(
      report(3, { scopes: scope ? [{ ...scope, risk: 'W'.repeat(4_000) }] : [] }),
    );
    const pages = pagesOf(pdf);
    expect(pages.map(textOn).join('').match(/W/g)?.length).toBeGreaterThanOrEqual(4_000);
    for (const { content, heightMillimetres } of pages) {
      const height = (heightMillimetres * 72) / 25.4;
      for (const [, x, y] of content.matchAll(/1 0 0 1 ([\d.-]+) ([\d.-]+) Tm/g)) {
        expect(Number(x)).toBeGreaterThan(40);
        expect(Number(x)).toBeLessThan(560);
        expect(Number(y)).toBeGreaterThan(30);
        expect(Number(y)).toBeLessThan(height - 30);
      }
    }
  });
});
