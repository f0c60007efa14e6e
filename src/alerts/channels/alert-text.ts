import { Temporal } from 'temporal-polyfill';
import { plainLine } from './plain-line.js';

/** One announcement of an alert, as it is to be told. */
export interface ToldAlert {
  event: 'opened' | 'worse' | 'due again' | 'handed on' | 'given' | 'closed' | 'summary' | 'test';
  kind: string;
  severity: 'notice' | 'warning' | 'urgent';
  subjectKind: string;
  facts: Readonly<Record<string, unknown>>;
  /** Whether it was closed meanwhile. */
  isClosed: boolean;
  /** IANA time zone in which times are told. */
  timeZone: string;
}

/** An announcement in words. */
export interface AlertText {
  title: string;
  parts: { heading: string | null; lines: string[] }[];
}

type Facts = ToldAlert['facts'];

/** What the trade calls a kind of alert, what is wrong then, and what to do next. */
interface KindWords {
  name: string;
  wrong: (facts: Facts) => string;
  next: (facts: Facts) => string;
  /** Whether somebody could be hurt: then it is said who has the last word. */
  couldHurt?: true;
}

const longestValue = 120;
const longestLine = 300;
const longestTitle = 150;
const mostLines = 12;

const caution =
  'The label, local codes and your professional judgement come first; this is only what the record says.';

const kinds: Readonly<Record<string, KindWords>> = {
  'low stock': {
    name: 'Low stock',
    wrong: (facts) =>
      `${number(facts.usablePieces) ?? 'Too few'} usable, low at ${number(facts.minimumPieces) ?? 'its level'}.`,
    next: () => 'Order more, or set another level if so many are not needed.',
  },
  'use-by near': {
    name: 'Use-by date near',
    wrong: (facts) =>
      `It may be used through ${value(facts.lastDay) || value(facts.useBy) || 'its last day'}, then no more.`,
    next: () =>
      'Use it first, before later dates; what will not be used in time can be sent to another studio or set aside.',
  },
  'opened life ending': {
    name: 'Opened life ending',
    wrong: (facts) =>
      `The open container may be used through ${value(facts.lastDay) || 'its last day'}, then no more.`,
    next: () => 'Use it first, and discard it after that day.',
  },
  'expired on the shelf': {
    name: 'Expired on the shelf',
    wrong: (facts) =>
      `It is past its last day${value(facts.lastDay) === '' ? '' : `, ${value(facts.lastDay)}`}, and still lies among the stock.`,
    next: () => 'Take it off the shelf now and book it as wasted, or keep it for practice skin only.',
    couldHurt: true,
  },
  'held stock on hand': {
    name: 'Held stock on hand',
    wrong: (facts) =>
      `It is on hold${since(facts.heldSince)}${because(facts.holdKinds)}, and some of it is still here.`,
    next: (facts) =>
      heldNext[value(facts.whatToDo)] ?? 'Set it apart so that nobody takes it, then decide on it.',
    couldHurt: true,
  },
  'use against a refusal': {
    name: 'Used against a refusal',
    wrong: (facts) =>
      `It was used although it is ${value(facts.reasons) || 'not to be used'}. The session is recorded as it was.`,
    next: () =>
      'Look at the session, decide whether the client has to be told, and set aside what is left of it.',
    couldHurt: true,
  },
  'same code, other use-by': {
    name: 'One lot code, several use-by dates',
    wrong: (facts) =>
      `The same code is on record with the use-by ${value(facts.otherUseBy) || 'of another day'} too.`,
    next: () =>
      'Compare with the labels and correct the date that is wrong; until then go by the earlier one.',
  },
  'kit cannot be filled': {
    name: 'A kit cannot be filled',
    wrong: (facts) =>
      `The session on ${value(facts.day) || 'a day to come'} lacks ${value(facts.lacking) || 'something'}: not enough will be here that day in date, free and not on hold.`,
    next: () => 'Order or fetch what lacks, choose another product for the kit, or move the session.',
  },
  'touch-up mix out of date': {
    name: 'A touch-up mix will be out of date',
    wrong: (facts) =>
      `A touch-up is owed${through(facts.closesOn)}, and what was mixed at the first visit cannot all be used by then${because(facts.because)}.`,
    next: (facts) =>
      value(facts.anotherLot) === 'here'
        ? 'Bring the touch-up forward, or plan the mix anew with the other lot that is here.'
        : 'Bring the touch-up forward, or order the same shade and plan the mix anew.',
    couldHurt: true,
  },
  'delivery late': {
    name: 'A delivery is late',
    wrong: (facts) =>
      `It was expected on ${value(facts.expectedOn) || 'an earlier day'} and has not been received.`,
    next: () => 'Ask the supplier; receive it if it is here, or call it off.',
  },
  'order due': {
    name: 'An order is due',
    wrong: (facts) =>
      `By the latest plan ${number(facts.lines) ?? 'some'} ${number(facts.lines) === '1' ? 'product is' : 'products are'} to be ordered by ${value(facts.orderOn) || 'today'}.`,
    next: () => 'Look at the plan, draft the order from its basket, and place it today.',
  },
  'order not sent': {
    name: 'An order was not sent',
    wrong: (facts) => `It was to go out by mail and is tried no more. ${value(facts.cause)}`.trimEnd(),
    next: () => 'Mend the cause and send the order again, or send it by hand.',
  },
  'no plan made': {
    name: 'No plan could be made',
    wrong: (facts) =>
      `What to order on ${value(facts.day) || 'an earlier day'} could not be worked out: it was tried several times. ${value(facts.cause)}`.trimEnd(),
    next: () =>
      'Have a plan made again; if that fails, too, tell whoever runs the service. Until then go by the levels of the stock.',
  },
  'in transit too long': {
    name: 'Under way for long',
    wrong: (facts) =>
      `Goods sent ${value(facts.direction) === 'out' ? 'from here ' : value(facts.direction) === 'in' ? 'to here ' : ''}on ${value(facts.sentOn) || 'an earlier day'} have not arrived.`,
    next: () => 'Ask the other studio; receive what arrived, or say what is missing.',
  },
  'held where it came from': {
    name: 'Held where it came from',
    wrong: () => 'The studio that sent it has put the same goods on hold.',
    next: () =>
      'Set aside what is left of it here, and ask the other studio why before anything of it is used.',
    couldHurt: true,
  },
  'recall open': {
    name: 'Recall open',
    wrong: (facts) =>
      `Lots here that are affected: ${number(facts.affectedLots) ?? 'not counted'}; still to be decided: ${number(facts.undecidedLots) ?? 'not counted'}.`,
    next: () =>
      'Stop using them, set every container aside, decide the doubtful lots, and tell whoever was touched by them.',
    couldHurt: true,
  },
  'recall notice found': {
    name: 'A published notice meets something here',
    wrong: () => 'A published notice names what may be in your register or on your shelf.',
    next: () => 'Read it now; open a recall from it, or dismiss it with your reason.',
    couldHurt: true,
  },
  'drill due': {
    name: 'A recall drill is due',
    wrong: (facts) => `It is due by ${value(facts.dueOn) || 'now'}.`,
    next: () => 'Start the drill: it rehearses a recall against the clock, and nothing is really held.',
  },
  'backup failed': {
    name: 'A backup failed',
    wrong: (facts) =>
      `${value(facts.cause) === '' ? 'The last backup could not be made' : `The last backup could not be made: ${value(facts.cause)}`}. ${lastGood(facts)}`,
    next: () => 'See to the cause, such as a full disk, and make a backup now.',
  },
  'backup overdue': {
    name: 'No good backup for too long',
    wrong: (facts) => lastGood(facts),
    next: () =>
      'Find out why no backup is made, and make one now: what is recorded since then would be lost with this machine.',
  },
  'notice source failing': {
    name: 'Published notices cannot be fetched',
    wrong: (facts) =>
      `Notices are not read any more from ${value(facts.address) || 'a source'}${value(facts.cause) === '' ? '' : `: ${value(facts.cause)}`}. Silence is no proof that nothing was recalled.`,
    next: () =>
      'Look at the address in the settings of the service, and read the published notices yourself meanwhile.',
  },
  'queue unhealthy': {
    name: 'Alerts are not being sent in time',
    wrong: (facts) =>
      `Deliveries wait longer than they should${because(facts.cause)}. The alerts themselves stand in the app.`,
    next: (facts) =>
      value(facts.whatToDo) ||
      'Tell whoever runs the service, and look at the alerts in the app until this is over.',
  },
};

const heldNext: Readonly<Record<string, string | undefined>> = {
  'set it apart':
    'Set it apart so that nobody takes it; return or destroy it only as the hold or the recall says.',
  'return or destroy it as the recall says': 'It is set apart; return or destroy it as the recall says.',
  'decide on it': 'It is set apart; decide whether it is released, returned or wasted.',
};

/** How facts are named to a person; others are named by their own words. */
const factNames: Readonly<Record<string, string>> = {
  lotCode: 'Lot',
  labelCode: 'Label',
  place: 'Place',
  places: 'Places',
  useBy: 'Use-by',
  openedAt: 'Opened',
  lastDay: 'Last day',
  pieces: 'Pieces',
  usablePieces: 'Usable',
  minimumPieces: 'Low at',
  expectedOn: 'Expected on',
  reference: 'Number',
  recall: 'Recall',
  holdKinds: 'Kind of hold',
  affectedLots: 'Lots affected',
  undecidedLots: 'Lots to decide',
  configuration: 'Cartridge',
  labelCodes: 'Labels',
  supplier: 'Supplier',
  orderedOn: 'Ordered on',
  procedure: 'Procedure',
  day: 'Day',
  lacking: 'Lacking',
  opensOn: 'Touch-up from',
  closesOn: 'Touch-up until',
  plannedOn: 'Planned on',
  alsoAtRisk: 'Also at risk',
  sentOn: 'Sent on',
  lines: 'Lines',
  dueOn: 'Due by',
  otherUseBy: 'Also with use-by',
};

/** Said by the product's own line, or of no use to a person. */
const notListed = new Set([
  'product',
  'shade',
  'maker',
  'boundBy',
  'openedLifeFrom',
  'status',
  'reasons',
  'because',
  'anotherLot',
  'direction',
  'heldSince',
  'whatToDo',
  'since',
  'cause',
  'lastGoodAt',
  'lastReadAt',
  'address',
]);

const events: Readonly<Record<ToldAlert['event'], string>> = {
  opened: '',
  worse: 'Worse now: ',
  'due again': 'Due again: ',
  'handed on': 'Nobody saw to it yet: ',
  given: 'For you to see to: ',
  closed: 'Over: ',
  summary: '',
  test: '',
};

const over = 'This is over; nothing more is to be done about it.';
const closedMeanwhile = 'This was closed before the message went out; nothing more is to be done about it.';

const severities: Readonly<Record<ToldAlert['severity'], string>> = {
  urgent: 'Urgent: to be seen to now.',
  warning: 'To be seen to soon.',
  notice: 'To know.',
};

/**
 * What a person is told of an alert, in plain words of the trade: what is wrong, of which product, lot and place, and
 * what to do next. Whatever the facts hold, each line is one line and short; ids are left out.
 */
export function alertText(alert: ToldAlert): AlertText {
  const { event, severity } = alert;
  const facts = told(alert.facts, alert.timeZone);
  const isMeanwhile = alert.isClosed && event !== 'closed';
  const words = wordsOf(alert.kind);
  const title = alertTitle(alert.kind, facts, isMeanwhile ? 'Closed meanwhile: ' : events[event]);
  const what = { heading: 'What it is about', lines: aboutLines(facts) };
  const parts =
    event === 'closed' || isMeanwhile
      ? [{ heading: null, lines: [isMeanwhile ? closedMeanwhile : over] }, what]
      : [
          { heading: null, lines: [words.wrong(facts), severities[severity]] },
          what,
          {
            heading: 'What to do next',
            lines: words.couldHurt ? [words.next(facts), caution] : [words.next(facts)],
          },
        ];
  return {
    title,
    parts: parts
      .map(({ heading, lines }) => ({ heading, lines: lines.map((line) => plainLine(line, longestLine)) }))
      .filter(({ lines }) => lines.length > 0),
  };
}

/**
 * What an alert is of, in one short line.
 * @param before what has become of it
 */
export function alertTitle(kind: string, facts: Facts, before = ''): string {
  const about = [nameOf(facts), lotOf(facts)].filter((part) => part !== '').join(', ');
  return plainLine(`${before}${wordsOf(kind).name}${about === '' ? '' : `: ${about}`}`, longestTitle);
}

function wordsOf(kind: string): KindWords {
  const known = Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
  if (known !== undefined) return known;
  const line = plainLine(kind, longestValue) || 'alert';
  return {
    name: line.charAt(0).toUpperCase() + line.slice(1),
    wrong: () => 'This stands open in the record.',
    next: () => 'Open it in the app, see to it, and say that you do.',
  };
}

function aboutLines(facts: Facts): string[] {
  const product = productOf(facts);
  const lines = product === '' ? [] : [`Product: ${product}`];
  for (const [name, each] of Object.entries(facts)) {
    if (notListed.has(name) || /Ids?$/.test(name) || lines.length >= mostLines) continue;
    const label = Object.hasOwn(factNames, name) ? factNames[name] : capitalised(name);
    if (each === true) lines.push(`${label}: yes`);
    else if (value(each) !== '') lines.push(`${label}: ${value(each)}`);
  }
  return lines;
}

function productOf(facts: Facts): string {
  const product = [value(facts.product), value(facts.shade)].filter((part) => part !== '').join(' ');
  const maker = value(facts.maker);
  return product === '' || maker === '' ? product : `${product} by ${maker}`;
}

/** What it is about, as shortly as a title says it. */
function nameOf(facts: Facts): string {
  const procedure = [value(facts.procedure), value(facts.day)].filter((part) => part !== '').join(' on ');
  return (
    productOf(facts) ||
    value(facts.recall) ||
    value(facts.configuration) ||
    procedure ||
    value(facts.supplier)
  );
}

function lotOf(facts: Facts): string {
  const code = value(facts.lotCode);
  return code === '' ? '' : `lot ${code}`;
}

function because(fact: unknown): string {
  const reason = value(fact);
  return reason === '' ? '' : ` (${reason})`;
}

function since(fact: unknown): string {
  const instant = value(fact);
  return instant === '' ? '' : ` since ${instant}`;
}

function through(fact: unknown): string {
  const day = value(fact);
  return day === '' ? '' : ` until ${day}`;
}

function lastGood(facts: Facts): string {
  const at = value(facts.lastGoodAt);
  return at === '' ? 'There is no good backup.' : `The last good one is of ${at}.`;
}

function number(fact: unknown): string | undefined {
  return typeof fact === 'number' && Number.isFinite(fact) ? String(fact) : undefined;
}

/** A fact as a person reads it; empty for what is unknown and for objects. */
function value(fact: unknown): string {
  if (Array.isArray(fact)) {
    const each = fact.map(value).filter((text) => text !== '');
    return plainLine(each.join(', '), longestValue);
  }
  if (typeof fact === 'string') return plainLine(fact, longestValue);
  return number(fact) ?? '';
}

/** The facts with their instants as they are read in the studio. */
function told(facts: Facts, timeZone: string): Facts {
  const readable = (fact: unknown): unknown => {
    if (Array.isArray(fact)) return fact.map(readable);
    return typeof fact === 'string' && isInstant.test(fact) ? localTime(fact, timeZone) : fact;
  };
  return Object.fromEntries(Object.entries(facts).map(([name, fact]) => [name, readable(fact)]));
}

const isInstant = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d+)?Z$/;

/** To the minute, with the name of the time zone; what only looks like an instant, such as a lot code, as it is. */
function localTime(text: string, timeZone: string): string {
  if (Number.isNaN(Date.parse(text))) return text;
  const local = Temporal.Instant.fromEpochMilliseconds(Date.parse(text)).toZonedDateTimeISO(timeZone);
  return `${local.toPlainDate()} ${local.toPlainTime().toString({ smallestUnit: 'minute' })} (${timeZone})`;
}

function capitalised(name: string): string {
  const words = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return plainLine(words.charAt(0).toUpperCase() + words.slice(1), 40);
}
