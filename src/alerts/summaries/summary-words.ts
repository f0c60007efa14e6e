import { alertTitle } from '../channels/alert-text.js';
import { plainLine } from '../channels/plain-line.js';
import type { SummaryContent, SummaryLine, SummaryPart, SummaryPartName } from './summary-choice.js';

/** A summary in words, as every channel says it. */
export interface SummaryText {
  /** One line: how much there is of what. */
  title: string;
  parts: { heading: string; lines: string[] }[];
}

const longestLine = 300;
const longestValue = 120;

const headings: Readonly<Record<SummaryPartName, string>> = {
  'answer today': 'To be seen to today',
  'use first': 'Use first',
  discard: 'Take off the shelf and discard',
  order: 'Order',
  'orders due': 'Orders due by the plan',
  'touch-ups at risk': 'Touch-ups and sessions at risk',
};

const counted: Readonly<Record<SummaryPartName, string>> = {
  'answer today': 'to be seen to',
  'use first': 'to use first',
  discard: 'to discard',
  order: 'to order',
  'orders due': 'orders due',
  'touch-ups at risk': 'sessions at risk',
};

/** What a person is told in the morning; never a client. */
export function summaryText({ day, parts }: SummaryContent): SummaryText {
  const amounts = parts.map((part) => `${part.lines.length + part.more} ${counted[part.name]}`);
  return {
    title: `This morning, ${day}: ${amounts.length === 0 ? 'nothing to be done' : amounts.join(', ')}`,
    parts: parts.map((part) => ({ heading: headings[part.name], lines: linesOf(part) })),
  };
}

function linesOf({ name, lines, more }: SummaryPart): string[] {
  const said = lines.map((line) => plainLine(lineOf(name, line), longestLine));
  return more > 0 ? [...said, `… and ${more} more in the app.`] : said;
}

function lineOf(part: SummaryPartName, line: SummaryLine): string {
  const { facts } = line;
  if (part === 'use first' || part === 'discard') {
    const last = part === 'discard' ? 'its last day was' : 'usable through';
    return sentence([thingOf(line), fact(last, facts.lastDay), fact('at', facts.places ?? facts.place)]);
  }
  if (part === 'order') {
    return sentence([
      thingOf(line),
      `${text(facts.usablePieces) || 'too few'} usable`,
      fact('low at', facts.minimumPieces),
    ]);
  }
  const title = alertTitle(line.kind, line.facts);
  if (part === 'answer today') return line.severity === 'urgent' ? `Urgent – ${title}` : title;
  const window =
    typeof facts.closesOn === 'string' ? `${text(facts.opensOn)} to ${text(facts.closesOn)}` : '';
  const when = text(facts.day) || text(facts.plannedOn) || window;
  const besides = [when, text(facts.procedure)].filter((each) => !title.includes(each));
  return sentence([title, ...besides, fact('lacking', facts.lacking)]);
}

/** The product with its lot or label, or the configuration of a cartridge, by the names people use. */
function thingOf({ kind, facts }: SummaryLine): string {
  const product = [text(facts.product), text(facts.shade)].filter((part) => part !== '').join(' ');
  const maker = text(facts.maker);
  const name = product !== '' && maker !== '' ? `${product} by ${maker}` : product;
  const parts = [
    name || text(facts.configuration) || kind,
    fact('lot', facts.lotCode),
    fact('label', facts.labelCode),
  ];
  return sentence(parts);
}

function sentence(parts: readonly string[]): string {
  return parts.filter((part) => part !== '').join(', ');
}

function fact(words: string, value: unknown): string {
  const said = text(value);
  return said === '' ? '' : `${words} ${said}`;
}

/** Empty for what is unknown. */
function text(value: unknown): string {
  if (Array.isArray(value)) {
    const each = value.map(text).filter((one) => one !== '');
    return plainLine(each.join(' and '), longestValue);
  }
  if (typeof value === 'number' && Number.isFinite(value)) return String(value);
  return typeof value === 'string' ? plainLine(value, longestValue) : '';
}
