import type { Element } from './element.js';
import { readDate, type StatedDate } from './gs1-date.js';

/** What elements say about an item, in the words of the trade. A fact is absent when its identifier is. */
export type ElementFacts = {
  /** AI 00, the number of a parcel or pallet. */
  readonly shippingContainerCode?: string;
  /** AI 01, always 14 digits. */
  readonly gtin14?: string;
  /** AI 02, the product inside an outer box; `count` (AI 37) says how many. */
  readonly contentGtin14?: string;
  readonly count?: number;
  /** AI 10. */
  readonly lotCode?: string;
  /** AI 11. */
  readonly producedOn?: StatedDate;
  /** AI 13. */
  readonly packedOn?: StatedDate;
  /** AI 15. */
  readonly bestBefore?: StatedDate;
  /** AI 16. */
  readonly sellBy?: StatedDate;
  /** AI 17: the last day of use. */
  readonly useBy?: StatedDate;
  /** AI 7003: no use after this moment, local to the label; `time` is HH:MM. */
  readonly useByMoment?: { readonly date: string; readonly time: string };
  /** AI 20. */
  readonly productVariant?: string;
  /** AI 21. */
  readonly serial?: string;
  /** AI 22. */
  readonly consumerProductVariant?: string;
  /** AI 235: the serial of a party that acts for the brand owner. */
  readonly thirdPartySerial?: string;
  /** AI 240. */
  readonly additionalProductIdentification?: string;
  /** AI 241. */
  readonly customerPartNumber?: string;
  /** AI 250. */
  readonly secondarySerial?: string;
  /** AI 30, pieces in one item of variable count. */
  readonly variableCount?: number;
};

/**
 * The facts in elements that are already validated. `thisYear` decides the century; a date with DD = 00 is the
 * last day of its month, with the precision "month".
 */
export function factsOf(elements: readonly Element[], thisYear: number): ElementFacts {
  const text = (identifier: string): string | undefined =>
    elements.find((element) => element.applicationIdentifier === identifier)?.value;
  const date = (identifier: string): StatedDate | undefined => {
    const reading = readDate(text(identifier) ?? '', thisYear, 'month end');
    return reading.ok ? { date: reading.date, precision: reading.precision } : undefined;
  };
  const number = (identifier: string): number | undefined => {
    const digits = text(identifier);
    return digits === undefined ? undefined : Number(digits);
  };
  return withoutAbsent({
    shippingContainerCode: text('00'),
    gtin14: text('01'),
    contentGtin14: text('02'),
    count: number('37'),
    lotCode: text('10'),
    producedOn: date('11'),
    packedOn: date('13'),
    bestBefore: date('15'),
    sellBy: date('16'),
    useBy: date('17'),
    useByMoment: moment(text('7003'), thisYear),
    productVariant: text('20'),
    serial: text('21'),
    consumerProductVariant: text('22'),
    thirdPartySerial: text('235'),
    additionalProductIdentification: text('240'),
    customerPartNumber: text('241'),
    secondarySerial: text('250'),
    variableCount: number('30'),
  });
}

function moment(digits: string | undefined, thisYear: number): ElementFacts['useByMoment'] {
  if (digits === undefined) return undefined;
  const reading = readDate(digits.slice(0, 6), thisYear, 'refused');
  return reading.ok
    ? { date: reading.date, time: `${digits.slice(6, 8)}:${digits.slice(8, 10)}` }
    : undefined;
}

function withoutAbsent(facts: ElementFacts): ElementFacts {
  return Object.fromEntries(Object.entries(facts).filter(([, fact]) => fact !== undefined));
}
