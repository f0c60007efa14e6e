import { Injectable } from '@nestjs/common';
import { Paper } from '../../platform/drawing/paper.js';
import { drawPdf } from '../../platform/drawing/pdf.js';
import { explainedPieces } from '../closing/closing-obstacles.js';
import type { RecallReportView } from './recall-report.views.js';
import { writtenInstant } from './report-instants.js';

/** So many rows each table of the document has at most; what is left out is said, and stands in the data. */
export const mostRowsDrawn = 1_000;

type Report = RecallReportView;
type Balance = Report['balance'][number];

/** Draws the report of a recall as a document that a studio can hand to an inspector. */
@Injectable()
export class ReportDrawing {
  /** @returns a PDF of A4 pages */
  async draw(report: Report): Promise<Buffer> {
    const { recall, studio } = report;
    const drill = recall.kind === 'drill';
    const title = drill ? 'Drill report' : 'Recall report';
    return drawPdf(
      { size: 'A4', bufferPages: true, autoFirstPage: true, info: { Title: `${title}: ${recall.title}` } },
      (document) => {
        const at = (instant: string | null) => writtenInstant(instant, studio.timeZone);
        const paper = new Paper(document, {
          left: `${studio.name} · ${recall.title}`,
          mark: markOf(report),
          foot: `${title} ${recall.id} · drawn up ${at(report.drawnAt)}`,
        });
        const pen: Pen = { report, paper, at, person: personNames(report) };
        paper.title(title, recall.title);
        drawStanding(pen);
        drawScopes(pen);
        drawTimeline(pen);
        drawLots(pen);
        drawExposures(pen);
        drawContacts(pen);
        drawContainers(pen);
        drawDispositions(pen);
        drawBalance(pen);
        drawSteps(pen);
        drawClosing(pen);
        drawNotes(pen);
        paper.finish();
      },
    );
  }
}

interface Pen {
  report: Report;
  paper: Paper;
  at: (instant: string | null) => string;
  person: (id: string | null) => string;
}

function markOf({ recall }: Report): string {
  const parts = recall.kind === 'drill' ? ['Drill: nothing was held, nobody was told'] : [];
  if (recall.state === 'open') parts.push('not closed');
  if (recall.state === 'withdrawn') parts.push('withdrawn');
  return parts.join(' · ');
}

function personNames({ people }: Report): Pen['person'] {
  const names = new Map(people.map(({ id, name }) => [id, name]));
  return (id) => (id === null ? '–' : (names.get(id) ?? `person ${id.slice(0, 8)}`));
}

function drawStanding({ report, paper, at, person }: Pen): void {
  const { recall, studio, figures, scopes } = report;
  const latest = scopes.at(-1);
  if (recall.kind === 'drill') {
    paper.paragraph('This was a drill, a rehearsal: nothing was held and nobody was told.', 'warning');
  }
  if (recall.state === 'open') {
    paper.paragraph(
      `This ${recall.kind} is not closed. The report shows how it stood at ${at(report.drawnAt)}.`,
      'warning',
    );
  }
  paper.facts([
    ['Studio', studio.name],
    ['State', recall.endedAt === null ? recall.state : `${recall.state}, ${at(recall.endedAt)}`],
    [
      'Opened',
      `${at(recall.openedAt)}, ${recall.openedBy === null ? 'with the chain' : person(recall.openedBy)}`,
    ],
    ['Recalled by', latest?.issuer ?? 'not stated'],
    ['Reference', latest?.reference ?? 'not stated'],
    ...(recall.chainWide
      ? ([['Chain', 'Opened for every studio of the chain; this is the part of this studio.']] as const)
      : []),
  ]);
  paper.gap(4);
  const { lots, clients, containers, balance } = figures;
  const settled = clients.reached + clients.refused + clients.unreachable;
  paper.figures([
    [String(lots.affected), lots.affected === 1 ? 'lot affected' : 'lots affected'],
    [String(lots.undecided), lots.undecided === 1 ? 'lot undecided' : 'lots undecided'],
    [`${containers.found} of ${containers.toFind}`, 'containers found'],
    [`${explainedPieces(figures)} of ${balance.pieces}`, 'pieces accounted for'],
    [String(clients.exposed), clients.exposed === 1 ? 'client exposed' : 'clients exposed'],
    [String(report.exposures.sessions), 'sessions'],
    [recall.kind === 'drill' ? '–' : String(clients.reached), 'clients reached'],
    [recall.kind === 'drill' ? '–' : `${settled} of ${clients.exposed}`, 'clients settled'],
  ]);
}

function drawScopes({ report, paper, at, person }: Pen): void {
  paper.section('What is recalled');
  for (const scope of [...report.scopes].reverse()) {
    const latest = scope.number === report.scopes.length;
    const notice =
      scope.noticeSource === null
        ? 'none'
        : `${scope.noticeSource}; SHA-256 of the text as kept ${scope.noticeDigest}`;
    const rows: [string, string][] = [
      [
        report.scopes.length === 1 ? 'Scope' : `Scope, version ${scope.number}${latest ? ' (in force)' : ''}`,
        scope.words.join(' '),
      ],
    ];
    if (scope.reason !== null) rows.push(['Why amended', scope.reason]);
    rows.push(['Recorded', `${at(scope.recordedAt)}, ${person(scope.personId)}`], ['Notice', notice]);
    if (scope.issuedOn !== null) rows.push(['Issued on', scope.issuedOn]);
    if (scope.classification !== null) rows.push(['Classification', scope.classification]);
    if (scope.risk !== null) rows.push(['Risk, by the notice', scope.risk]);
    if (scope.remedy !== null) rows.push(['Remedy, by the notice', scope.remedy]);
    paper.facts(rows);
    paper.gap(5);
  }
}

function drawTimeline({ report, paper, at, person }: Pen): void {
  paper.section('Timeline');
  paper.table(
    [
      { title: 'When', share: 19, text: (event) => at(event.at) },
      { title: 'What', share: 62, text: ({ words }) => words },
      { title: 'Who', share: 19, text: ({ personId }) => (personId === null ? '' : person(personId)) },
    ],
    cut(paper, report.timeline, 'events'),
  );
}

function drawLots({ report, paper, at, person }: Pen): void {
  paper.section('Lots');
  if (report.lots.length === 0) {
    paper.paragraph('No lot that was ever here is meant.');
    return;
  }
  paper.table(
    [
      { title: 'Product', share: 26, text: (lot) => `${productOf(lot)}, ${lot.makerName}` },
      { title: 'Lot', share: 12, text: ({ code }) => code ?? 'no code' },
      { title: 'Use by', share: 11, text: ({ useBy }) => useBy ?? '–' },
      { title: 'Grade', share: 10, text: ({ grade }) => grade },
      { title: 'Why', share: 23, text: ({ reasons }) => reasons.join(' ') },
      {
        title: 'Decision',
        share: 22,
        text: ({ standing, decision }) =>
          decision === null
            ? standing
            : `${decision.decision}: ${decision.reason} (${person(decision.personId)}, ${at(decision.at)})`,
      },
    ],
    cut(paper, report.lots, 'lots'),
  );
}

function drawExposures({ report, paper }: Pen): void {
  const { clients, certainClients, sessions, certainSessions, reversedUses, items, leftOut } =
    report.exposures;
  paper.section('Exposed clients');
  if (sessions === 0) {
    paper.paragraph('No client was exposed: no session used these lots, nor a blend made of them.');
    return;
  }
  paper.paragraph(
    `${clients} clients in ${sessions} sessions; certainly ${certainClients} clients in ${certainSessions} sessions, the others possibly. ${reversedUses === 0 ? '' : `${reversedUses} uses were recorded by mistake and taken back; they expose nobody. `}Clients are named by their reference only.`,
  );
  paper.table(
    [
      { title: 'Client', share: 13, text: ({ clientReference }) => clientReference },
      { title: 'Session', share: 13, text: ({ day }) => day },
      { title: 'Visit', share: 15, text: ({ visitKind }) => visitKind },
      { title: 'Place', share: 13, text: ({ bodyPlace }) => bodyPlace },
      { title: 'Product', share: 22, text: (exposure) => productOf(exposure) },
      { title: 'Lot', share: 13, text: ({ lotCode }) => lotCode ?? 'no code' },
      {
        title: 'Certainty',
        share: 15,
        text: ({ certainty, as }) =>
          as === 'itself'
            ? certainty
            : `${certainty}, ${as === 'house blend' ? 'in a blend' : 'open that day'}`,
      },
    ],
    cut(paper, items, 'exposures', leftOut),
  );
}

function drawContacts({ report, paper, at }: Pen): void {
  const { counts, clients, leftOut } = report.contacts;
  paper.section('Telling people');
  if (report.recall.kind === 'drill') {
    paper.paragraph('Nobody was told: this was a drill.');
    return;
  }
  if (counts.length === 0) paper.paragraph('Nobody was told yet.');
  else {
    paper.table(
      [
        { title: 'Who', share: 30, text: ({ audience }) => audience },
        { title: 'Outcome', share: 40, text: ({ outcome }) => outcome },
        { title: 'Attempts', share: 15, align: 'right', text: ({ attempts }) => String(attempts) },
      ],
      counts,
    );
  }
  if (clients.length === 0) return;
  paper.table(
    [
      { title: 'Client', share: 25, text: ({ clientReference }) => clientReference },
      { title: 'Attempts', share: 15, align: 'right', text: ({ attempts }) => String(attempts) },
      { title: 'Exposed', share: 15, text: ({ certainty }) => certainty ?? '–' },
      {
        title: 'How it stands',
        share: 25,
        text: ({ standing, erased }) => (erased ? `${standing}, erased` : standing),
      },
      { title: 'Latest attempt', share: 20, text: ({ lastAt }) => at(lastAt) },
    ],
    cut(paper, clients, 'clients', leftOut),
  );
}

function drawContainers({ report, paper, at, person }: Pen): void {
  paper.section('Bottles and boxes looked for');
  if (report.containers.length === 0) {
    paper.paragraph('Nothing of these lots was here any more.');
    return;
  }
  paper.table(
    [
      { title: 'Label', share: 17, text: ({ labelCode }) => labelCode },
      { title: 'Product', share: 22, text: ({ productName }) => productName },
      { title: 'Lot', share: 13, text: ({ lotCode }) => lotCode ?? 'no code' },
      { title: 'Form', share: 9, text: ({ form }) => form },
      { title: 'Standing', share: 14, text: ({ standing }) => standing },
      { title: 'Tag', share: 12, text: ({ tag }) => tag ?? '–' },
      {
        title: 'When and who',
        share: 27,
        text: ({ foundAt, personId }) => (foundAt === null ? '–' : `${at(foundAt)}, ${person(personId)}`),
      },
    ],
    cut(paper, report.containers, 'containers'),
  );
}

function drawDispositions({ report, paper, at, person }: Pen): void {
  if (report.recall.kind === 'drill') return;
  paper.section('Returned or destroyed');
  if (report.dispositions.length === 0) {
    paper.paragraph('Nothing was returned or destroyed.');
    return;
  }
  paper.table(
    [
      { title: 'Label', share: 16, text: ({ labelCode }) => labelCode },
      { title: 'What', share: 11, text: ({ kind }) => kind },
      { title: 'Pieces', share: 9, align: 'right', text: ({ pieces }) => String(pieces) },
      { title: 'Estimate', share: 10, align: 'right', text: ({ microlitres }) => millilitres(microlitres) },
      { title: 'Reference', share: 18, text: ({ reference }) => reference },
      {
        title: 'Seen by',
        share: 17,
        text: ({ witnessId }) => (witnessId === null ? 'photo kept' : person(witnessId)),
      },
      { title: 'When and who', share: 27, text: (row) => `${at(row.at)}, ${person(row.personId)}` },
    ],
    cut(paper, report.dispositions, 'containers'),
  );
}

function drawBalance({ report, paper }: Pen): void {
  paper.section('Mass balance');
  if (report.balance.length === 0) {
    paper.paragraph('No lot is affected, so there is nothing to balance.');
    return;
  }
  paper.paragraph(
    'Pieces are exact; a bottle is one piece. Volumes are estimates. What came in = used + emptied + blended + wasted + returned + sent + found + not accounted for.',
    'soft',
  );
  const product = {
    title: 'Product',
    text: (row: Balance) => `${productOf(row)}${row.isBlend ? ' (blend)' : ''}`,
  };
  const lot = { title: 'Lot', share: 14, text: ({ code }: Balance) => code ?? 'no code' };
  const figure = (title: string, text: (row: Balance) => string) => ({
    ...{ title, text, share: title.length > 8 ? 14 : title.length > 5 ? 11 : 8 },
    align: 'right' as const,
  });
  const pieces = (title: string, of: (row: Balance) => number) => figure(title, (row) => String(of(row)));
  const volume = (title: string, of: (row: Balance) => number) =>
    figure(title, (row) => millilitres(of(row)));
  paper.table(
    [
      { ...product, share: 22 },
      lot,
      pieces('In', (row) => row.cameInPieces),
      pieces('Used', (row) => row.usedPieces),
      pieces('Emptied', (row) => row.emptiedPieces),
      pieces('Blended', (row) => row.blendedPieces),
      pieces('Wasted', (row) => row.wastedPieces),
      pieces('Returned', (row) => row.returnedPieces),
      pieces('Sent', (row) => row.transferredOutPieces),
      pieces('Found', (row) => row.foundPieces),
      pieces('Open', (row) => row.notAccountedPieces),
    ],
    cut(paper, report.balance, 'lots'),
  );
  const liquids = report.balance.filter(({ cameInMicrolitres }) => cameInMicrolitres > 0);
  if (liquids.length > 0) {
    paper.table(
      [
        { ...product, share: 40 },
        lot,
        volume('In, estimate', (row) => row.cameInMicrolitres),
        volume('Used, estimate', (row) => row.usedMicrolitres),
        volume('Here, estimate', (row) => row.onHandMicrolitres),
      ],
      cut(paper, liquids, 'lots'),
    );
  }
  const open = report.balance.flatMap(({ code, unexplained }) =>
    unexplained.filter(({ pieces: count }) => count > 0).map((part) => ({ code, ...part })),
  );
  if (open.length === 0) paper.paragraph(`All ${report.figures.balance.pieces} pieces are accounted for.`);
  else {
    paper.table(
      [
        { title: 'Lot', share: 20, text: ({ code }) => code ?? 'no code' },
        { title: 'Not accounted for because', share: 60, text: ({ reason }) => reason },
        { title: 'Pieces', share: 20, align: 'right', text: ({ pieces: count }) => String(count) },
      ],
      cut(paper, open, 'reasons'),
    );
  }
}

function drawSteps({ report, paper, at, person }: Pen): void {
  const { steps, score } = report;
  if (score === null && steps.every(({ step, doneAt }) => step === 'closed' || doneAt === null)) return;
  paper.section(score === null ? 'Steps' : 'How the drill went');
  if (score !== null) {
    const share = (value: number | null) => (value === null ? 'nothing to count' : `${value} %`);
    paper.figures([
      [share(score.tracedPercent), 'uses traced to a client'],
      [share(score.balancedPercent), 'pieces balanced'],
      [share(score.foundPercent), 'containers found'],
      [`${score.minutes} min`, 'from opening to closing'],
    ]);
  }
  paper.table(
    [
      { title: 'Step', share: 30, text: ({ step }) => step },
      { title: 'Done', share: 25, text: ({ doneAt }) => (doneAt === null ? 'not done' : at(doneAt)) },
      {
        title: 'Minutes',
        share: 15,
        align: 'right',
        text: ({ minutes }) => (minutes === null ? '–' : String(minutes)),
      },
      { title: 'Who', share: 30, text: ({ personId }) => person(personId) },
    ],
    steps,
  );
}

function drawClosing({ report, paper, at, person }: Pen): void {
  const { closing, obstacles, recall } = report;
  paper.section('Closing');
  if (closing === null) {
    paper.paragraph('Not closed yet.', 'warning');
    paper.paragraph(
      obstacles.length === 0 ? 'Nothing stands against closing.' : 'What stands against closing:',
    );
    for (const { words } of obstacles) paper.paragraph(`– ${words}`);
    return;
  }
  if (closing.outcome === 'withdrawn') {
    paper.paragraph(`Withdrawn ${at(closing.at)}: ${closing.reason ?? 'no reason was given'}`);
    if (closing.signedBy !== null) paper.paragraph(`By ${person(closing.signedBy)}.`);
    return;
  }
  if (closing.overrides.length === 0) {
    paper.paragraph(
      obstacles.length === 0
        ? 'Nothing stood against closing.'
        : 'What was not done when the drill was closed:',
    );
    for (const { words } of obstacles) paper.paragraph(`– ${words}`);
  } else {
    paper.paragraph('Closed although this stood against it, for the reasons given:');
    paper.table(
      [
        {
          title: 'What stood open',
          share: 50,
          text: ({ obstacle }) => obstacles.find((each) => each.obstacle === obstacle)?.words ?? obstacle,
        },
        { title: 'Why it was closed all the same', share: 50, text: ({ reason }) => reason },
      ],
      closing.overrides,
    );
  }
  if (recall.kind === 'recall') {
    paper.paragraph(
      'Holds stay on what was not returned or destroyed, and standing holds stay in force for what may still arrive.',
    );
  }
  paper.signatures([
    ...(closing.signedBy === null
      ? []
      : [{ name: person(closing.signedBy), role: 'signed', at: at(closing.at) }]),
    ...(closing.secondSignedBy === null
      ? []
      : [{ name: person(closing.secondSignedBy), role: 'named as second', at: at(closing.at) }]),
  ]);
}

function drawNotes({ report, paper }: Pen): void {
  const { recall, studio } = report;
  paper.section('About this document');
  paper.paragraph(
    `Times are the service’s, written in the time zone of the studio (${studio.timeZone}). Clients are named by the reference under which the studio keeps them. The same as data: report.json of the recall ${recall.id}; every use with its amounts: its exposures.csv.`,
    'soft',
  );
  if (paper.charactersReplaced > 0) {
    paper.paragraph(
      `${paper.charactersReplaced} characters are not shown as they were written, since the fonts of this document lack them: "¿" stands for each, or its letter without the accent. The data have them as they are.`,
      'soft',
    );
  }
}

/** As many rows as the document holds; says what is left out. */
function cut<Row>(paper: Paper, rows: readonly Row[], what: string, leftOut = 0): readonly Row[] {
  const more = Math.max(0, rows.length - mostRowsDrawn) + leftOut;
  if (more === 0) return rows;
  paper.paragraph(
    `The first ${mostRowsDrawn} of ${rows.length + leftOut} ${what} are listed here; the data of this report have ${leftOut === 0 ? 'all' : `${rows.length}`} of them, the spreadsheets all.`,
    'warning',
  );
  return rows.slice(0, mostRowsDrawn);
}

function productOf({ productName, shade }: { productName: string; shade: string | null }): string {
  return shade === null ? productName : `${productName} ${shade}`;
}

function millilitres(microlitres: number): string {
  return microlitres === 0 ? '–' : `${(microlitres / 1_000).toFixed(1)} ml`;
}
