import type { Texts } from '../texts/en/english.js';
import { writtenDay } from '../texts/written-dates.js';

const names: readonly string[] = ['recall', 'maker', 'product', 'shade'];

/** What is read first, after what it is about: what is wrong and until when, which lot, where. Others follow as they come. */
const order: readonly string[] = [
  ...['status', 'reasons', 'because', 'lacking', 'minimumPieces', 'usablePieces'],
  ...['lastDay', 'daysLeft', 'boundBy', 'openedLifeFrom', 'openedAt', 'useBy', 'otherUseBy'],
  ...['lotCode', 'code', 'labelCode', 'labelCodes', 'pieces', 'place', 'places'],
  ...['procedure', 'day', 'opensOn', 'closesOn', 'anotherLot'],
];

const rankOf = (name: string): number => (order.includes(name) ? order.indexOf(name) : order.length);

/**
 * The facts of an alert as a reader needs them: what it is about first, then each by its name. Ids are left out, and what
 * is unknown.
 *
 * @param at writes an instant by the clocks of the studio
 */
export function writtenFacts(
  facts: Readonly<Record<string, unknown>>,
  texts: Texts,
  at: (instant: string) => string,
): string[] {
  const product = names.map((name) => facts[name]).filter((part) => typeof part === 'string' && part !== '');
  const inOrder = Object.entries(facts).toSorted(([one], [other]) => rankOf(one) - rankOf(other));
  const rest = inOrder.flatMap(([name, value]) => {
    if (names.includes(name) || /Ids?$/.test(name)) return [];
    const label = texts.alerts.facts[name] ?? name;
    if (value === true) return [label];
    const written = writtenValue(value, texts, at);
    return written === '' ? [] : [`${label} ${written}`];
  });
  return [...(product.length > 0 ? [product.join(' ')] : []), ...rest];
}

function writtenValue(value: unknown, texts: Texts, at: (instant: string) => string): string {
  if (Array.isArray(value)) {
    return value
      .map((each) => writtenValue(each, texts, at))
      .filter((each) => each !== '')
      .join(', ');
  }
  if (typeof value === 'number') return new Intl.NumberFormat(texts.language).format(value);
  if (typeof value !== 'string') return '';
  if (/^\d{4}-\d{2}-\d{2}$/.test(value)) return writtenDay(value, texts.language);
  if (/^\d{4}-\d{2}-\d{2}T[\d:.]+Z$/.test(value)) return at(value);
  return texts.alerts.values[value] ?? value;
}
