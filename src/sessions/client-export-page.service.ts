import { Injectable } from '@nestjs/common';
import { localDay } from '../identity/local-day.js';
import type { ClientExportView } from './client-export.views.js';
import type { SessionView, UseView } from './session-record.views.js';

/** Text that stands for itself in HTML, whatever it holds. */
class Markup {
  constructor(readonly html: string) {}
}

const escapes: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function told(value: unknown): string {
  if (value instanceof Markup) return value.html;
  if (Array.isArray(value)) return value.map(told).join('');
  if (value === null || value === undefined) return '–';
  return String(value).replace(/[&<>"']/g, (character) => escapes[character] ?? '');
}

/** A template whose values are escaped, unless they are markup made here. */
function markup(parts: TemplateStringsArray, ...values: unknown[]): Markup {
  return new Markup(parts.reduce((text, part, index) => text + told(values[index - 1]) + part));
}

/**
 * A client's export as a page to read and print: HTML without scripts, styles or anything from elsewhere, since a page
 * shows every script people write their names in, which the fonts built into a PDF do not.
 */
@Injectable()
export class ClientExportPage {
  of(view: ClientExportView): string {
    const { client, studio, retention } = view;
    const day = (instant: string) => localDay(instant, studio.timeZone);
    return markup`<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>Record of client ${client.reference}</title></head>
<body>
<h1>Record of client ${client.reference}</h1>
<p>${studio.name}, ${day(view.exportedAt)}. This is everything the studio keeps of you in its record of visits, and a copy in a form for computers goes with it.</p>
${list([
  ['Name', client.name],
  ['Contact', client.contact],
  ['Note', client.note],
  ['On record since', day(client.createdAt)],
  ['Erased on', client.erasedAt === null ? null : day(client.erasedAt)],
  ['Kept at least through', retention.keptThrough],
  ['Because of', retention.policy?.law],
])}
<h2>Visits</h2>
${view.sessions.length === 0 ? markup`<p>None.</p>` : view.sessions.map((session) => visit(session, day))}
<h2>House blends among the pigments</h2>
${list(
  view.blendedPigments.flatMap(({ useId, lots }) =>
    lots.map((lot): [string, unknown] => [`In use ${useId}`, labelOf(lot)]),
  ),
)}
<h2>Legal claims</h2>
${list(view.legalClaims.map((claim) => [day(claim.recordedAt), claim.reason]))}
<h2>Wishes for erasure</h2>
${list(
  view.erasureAnswers.map((answer) => [
    day(answer.recordedAt),
    [answer.answer, ...answer.obstacles.map(({ message }) => message)].join('. '),
  ]),
)}
<h2>Who was shown this record</h2>
${list(view.accesses.map(({ accessedAt, what, role }) => [accessedAt, `${what}, by ${role ?? 'the service'}`]))}
</body>
</html>
`.html;
  }
}

function list(rows: readonly (readonly [string, unknown])[]): Markup {
  if (rows.length === 0) return markup`<p>None.</p>`;
  return markup`<dl>
${rows.map(([term, value]) => markup`<dt>${term}</dt><dd>${value}</dd>\n`)}</dl>`;
}

function visit(session: SessionView, day: (instant: string) => string): Markup {
  const at = session.completedAt ?? session.inSetupAt ?? session.plannedStart;
  return markup`<h3>${at === null ? null : day(at)}: ${session.procedure.name}, ${session.visitKind}</h3>
${list([
  ['State', session.state],
  [
    'Place on the body',
    [session.bodyPlace, session.bodyPlaceDetail].filter((part) => part !== null).join(', '),
  ],
  ['Artist', session.artist.name],
  ['Signed by', session.signedBy?.name],
  ['Complications', session.complications],
  [
    'Healed result',
    session.healedResult === null
      ? null
      : `${session.healedResult.retainedColourPercent} % of the colour on ${day(session.healedResult.occurredAt)}. ${session.healedResult.note ?? ''}`,
  ],
])}
<table>
<tr><th>Maker</th><th>Product</th><th>Lot</th><th>Use by</th><th>Amount</th><th>Remark</th></tr>
${session.uses.map((use) => usedThing(use))}</table>
`;
}

function usedThing(use: UseView): Markup {
  const remarks = [
    use.mixId === null ? null : 'in a mix',
    use.againstRefusal === null ? null : `used although: ${use.againstRefusal.join(', ')}`,
    use.reason,
    use.reversal === null ? null : `recorded by mistake. ${use.reversal.reason ?? ''}`,
  ].filter((remark) => remark !== null);
  return markup`<tr><td>${use.makerName}</td><td>${[use.productName, use.shade].filter((part) => part !== null).join(' ')}</td><td>${use.lotCode}</td><td>${use.useBy}</td><td>${amountOf(use)}</td><td>${remarks.join('; ')}</td></tr>
`;
}

function amountOf({ pieces, microlitres }: UseView): string {
  if (pieces > 0) return `${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`;
  return microlitres > 0 ? `about ${microlitres} µL` : 'not known';
}

function labelOf(lot: {
  makerName: string;
  productName: string;
  shade: string | null;
  lotCode: string | null;
}): string {
  return [lot.makerName, lot.productName, lot.shade, lot.lotCode === null ? null : `lot ${lot.lotCode}`]
    .filter((part) => part !== null)
    .join(' ');
}
