import type { RangeChoice } from '../../reorder/decision/range-choice.js';
import type { ItemUnit } from '../../reorder/item.js';
import type { Texts } from '../texts/en/english.js';
import { writtenDay } from '../texts/written-dates.js';
import { writtenChance, writtenPerMille, writtenShare } from './figures/written-chance.js';
import { writtenMoney } from './figures/written-money.js';
import { writtenUnits } from './figures/written-units.js';

interface Coded {
  code: string;
  figures: Readonly<Record<string, unknown>>;
  /** The service's own sentence, English. */
  message: string;
}

/** What the figures of a reason are of. */
export interface FiguresOf {
  /** Null: of several items, so that an amount of one is of none. */
  unit: ItemUnit | null;
  /** Null: the figures hold no money. */
  currency: string | null;
}

/**
 * A reason, a remark or an assumption in the language of the reader. Where a figure that its sentence needs is missing, as it
 * does when it differs from item to item, it is told in general; and a code that is not known, as the service says it.
 */
export function reasonWords(texts: Texts, { code, figures, message }: Coded, of: FiguresOf): string {
  const say = texts.planReasons[code];
  if (!say) return message;
  let isMissing = false;
  const written = reader((name) => {
    const text = writtenFigure(name, figures, of, texts);
    isMissing ||= text === undefined;
    return text ?? '';
  });
  const amounts = reader((name) => amountOf(figures[name]));
  const sentence = say(written, amounts);
  return isMissing ? (texts.planReasonsInGeneral[code] ?? message) : sentence;
}

/** What a sentence asks for by name. */
function reader<Value>(read: (name: string) => Value): Record<string, Value> {
  return new Proxy<Record<string, Value>>({}, { get: (_, name) => read(String(name)) });
}

/** What a sentence turns on: nothing is 0, a day or a word something. */
function amountOf(value: unknown): number {
  if (typeof value === 'number') return value;
  return value === null || value === undefined ? 0 : 1;
}

/** A figure as it is written; undefined: there is none. */
function writtenFigure(
  name: string,
  figures: Coded['figures'],
  of: FiguresOf,
  texts: Texts,
): string | undefined {
  const value = figures[name];
  if (name === 'otherwise' && Array.isArray(value)) return otherWays(value, of, texts);
  if (name === 'setting') return texts.planSettingNames[String(value)] ?? texts.planOtherSetting;
  // Of a setting out of range.
  const named = name === 'given' || name === 'taken' ? String(figures.setting) : name;
  if (typeof value === 'number') return writtenNumber(named, value, of, texts);
  if (typeof value === 'string') return writtenText(name, value, texts);
  return undefined;
}

function writtenText(name: string, value: string, texts: Texts): string {
  if (name === 'choice') return texts.rangeChoices[value as RangeChoice] ?? value;
  return /^\d{4}-\d\d-\d\d$/.test(value) ? writtenDay(value, texts.language) : value;
}

/** A figure says by its name what it is: `wasteMinor` is money, `needUnits` an amount of the item, `perMille` a share. */
function writtenNumber(name: string, value: number, of: FiguresOf, texts: Texts): string | undefined {
  const { language } = texts;
  if (/minor(per\w+)?$/i.test(name)) return writtenPrice(name, value, of, texts);
  if (/units(\w*)$/i.test(name)) return of.unit === null ? undefined : writtenUnits(value, of.unit, texts);
  if (/permille$/i.test(name)) return writtenPerMille(value, language);
  if (/chance\w*$/i.test(name)) return writtenChance(value, texts);
  if (/share$/i.test(name)) return writtenShare(value, language);
  // Sessions and courses are expected with their chances; told are whole ones, or tenths of one.
  const told = /^(sessions|courses)$/.test(name) && value >= 0.95 ? Math.round(value) : value;
  if (/packs$/i.test(name)) return texts.plans.packs(told);
  return new Intl.NumberFormat(language, { maximumFractionDigits: /days/i.test(name) ? 0 : 1 }).format(told);
}

function writtenPrice(
  name: string,
  minor: number,
  { unit, currency }: FiguresOf,
  texts: Texts,
): string | undefined {
  if (currency === null) return undefined;
  if (name !== 'unitMinor') return writtenMoney(minor, currency, texts.language);
  if (unit === null) return undefined;
  // Of a microlitre nobody knows a price.
  const told = unit === 'microlitres' ? minor * 1_000 : minor;
  return texts.planUnitPrices[unit](writtenMoney(told, currency, texts.language));
}

/** The other ways of keeping a shade, each with what it costs in a year. */
function otherWays(
  ways: readonly { choice: string; costPerYearMinor: number; possible: boolean }[],
  of: FiguresOf,
  texts: Texts,
): string {
  return ways
    .map(({ choice, costPerYearMinor, possible }) => {
      const cost = possible
        ? writtenPrice('costPerYearMinor', costPerYearMinor, of, texts)
        : texts.planLine.appointmentImpossible;
      return `${writtenText('choice', choice, texts)} (${cost})`;
    })
    .join(', ');
}
