import type { RangeChoice } from '../../reorder/decision/range-choice.js';
import type { ItemUnit } from '../../reorder/item.js';
import type { Texts } from '../texts/en/english.js';
import { writtenDay } from '../texts/written-dates.js';
import { writtenChance, writtenPerMille } from './figures/written-chance.js';
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
  unit: ItemUnit;
  /** Null: the figures hold no money. */
  currency: string | null;
}

/**
 * A reason, a remark or an assumption in the language of the reader, else as the service says it: where there is no sentence
 * of its own for its code, or a figure that it needs is missing.
 */
export function reasonWords(texts: Texts, { code, figures, message }: Coded, of: FiguresOf): string {
  const say = texts.planReasons[code];
  if (!say) return message;
  let isMissing = false;
  const written = new Proxy<Record<string, string>>(
    {},
    {
      get: (_, name) => {
        const value = figures[String(name)];
        if (typeof value === 'number' || typeof value === 'string') {
          return writtenFigure(String(name), value, of, texts);
        }
        if (name === 'otherwise' && Array.isArray(value)) return otherWays(value, of, texts);
        isMissing = true;
        return '';
      },
    },
  );
  const sentence = say(written);
  return isMissing ? message : sentence;
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
        ? writtenFigure('costPerYearMinor', costPerYearMinor, of, texts)
        : texts.planLine.appointmentImpossible;
      return `${writtenFigure('choice', choice, of, texts)} (${cost})`;
    })
    .join(', ');
}

/** A figure says by its name what it is: `wasteMinor` is money, `needUnits` an amount of the item, `until` a day. */
function writtenFigure(name: string, value: number | string, of: FiguresOf, texts: Texts): string {
  const { language } = texts;
  if (name === 'choice') return texts.rangeChoices[value as RangeChoice] ?? String(value);
  if (typeof value === 'string') return /^\d{4}-\d\d-\d\d$/.test(value) ? writtenDay(value, language) : value;
  if (/minor(per\w+)?$/i.test(name)) {
    return of.currency === null ? String(value) : writtenMoney(value, of.currency, language);
  }
  if (/units(\w*)$/i.test(name)) return writtenUnits(value, of.unit, texts);
  if (/permille$/i.test(name)) return writtenPerMille(value, language);
  if (/(chance\w*|share)$/i.test(name)) return writtenChance(value, texts);
  // Sessions and courses are expected with their chances; told are whole ones, or tenths of one.
  const told = /^(sessions|courses)$/.test(name) && value >= 0.95 ? Math.round(value) : value;
  if (/packs$/i.test(name)) return texts.plans.packs(told);
  return new Intl.NumberFormat(language, { maximumFractionDigits: /days/i.test(name) ? 0 : 1 }).format(told);
}
