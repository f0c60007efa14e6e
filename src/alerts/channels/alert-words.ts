import type { ChannelMessage } from './channel-message.js';
import { plainLine } from './plain-line.js';

/** One announcement of an alert. */
export interface AlertAnnouncement {
  event: ChannelMessage['event'];
  kind: string;
  severity: 'notice' | 'warning' | 'urgent';
  facts: Readonly<Record<string, unknown>>;
}

const names: readonly string[] = ['product', 'shade', 'maker'];
const longestValue = 120;

/**
 * An alert in one line of plain words: what it is, of what product, then the facts in the order given. Ids are left out,
 * a person reads this; so is whatever is unknown, and control characters, which could forge a second line.
 */
export function alertWords({ event, kind, severity, facts }: AlertAnnouncement): string {
  const head = kind.charAt(0).toUpperCase() + kind.slice(1);
  const said = event === 'closed' ? `${head} is over` : `${head} (${[severity, ...again(event)].join(', ')})`;
  const product = [plain(facts.product), plain(facts.shade)].filter((part) => part !== '').join(' ');
  const maker = plain(facts.maker);
  const parts = [maker === '' ? product : `${product} by ${maker}`.trim()];
  for (const [name, value] of Object.entries(facts)) {
    if (names.includes(name) || /Ids?$/.test(name)) continue;
    if (value === true) parts.push(words(name));
    else if (plain(value) !== '') parts.push(`${words(name)} ${plain(value)}`);
  }
  const rest = parts.filter((part) => part !== '').join(', ');
  return rest === '' ? said : `${said}: ${rest}`;
}

/** What has become of it, where that is more than that it opened. */
function again(event: ChannelMessage['event']): string[] {
  return event === 'opened' ? [] : [event];
}

function words(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function plain(value: unknown): string {
  if (Array.isArray(value))
    return value
      .map(plain)
      .filter((each) => each !== '')
      .join(' and ');
  if (typeof value !== 'string' && typeof value !== 'number') return '';
  return plainLine(String(value), longestValue);
}
