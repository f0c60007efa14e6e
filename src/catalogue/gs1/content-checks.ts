/**
 * What the characters of a component must say beyond their number and set: one check for each that the GS1
 * Barcode Syntax Dictionary (Apache-2.0, GS1 AISBL) names [P]. The name the dictionary gives is beside each.
 * Every check gets text whose length and character set are already known to be right.
 */
import type { ContentCheckName } from './application-identifier-format.js';
import { checkCharacterPair, hasValidCheckDigit } from './check-digit.js';
import type { ContentFault } from './content-fault.js';
import { countryLetters, countryNumbers } from './country-codes.js';
import { checkCouponCode, checkCouponOffer } from './coupon-checks.js';
import { currencyNumbers } from './currency-codes.js';
import { type DateReading, readDate, readDateWithCentury } from './gs1-date.js';
import { checkInternationalBankAccountNumber } from './international-bank-account-number.js';
import { packageTypes } from './package-types.js';

type ContentCheck = (data: string, thisYear: number) => ContentFault | undefined;

const checks: Readonly<Record<ContentCheckName, ContentCheck>> = {
  /* iban */
  'bank-account': checkInternationalBankAccountNumber,
  /* csumalpha */
  'check-character-pair': (data) =>
    data.length >= 2 && checkCharacterPair(data.slice(0, -2)) === data.slice(-2)
      ? undefined
      : { offset: Math.max(0, data.length - 2), length: 2, allowed: 'the right check character pair' },
  /* csum */
  'check-digit': (data) =>
    hasValidCheckDigit(data)
      ? undefined
      : {
          offset: data.length - 1,
          length: 1,
          allowed: 'the right check digit (weights 3, 1 from the right)',
        },
  /* gcppos1 */
  'company-prefix': (data) => checkCompanyPrefix(data, 0),
  /* gcppos2 */
  'company-prefix-from-second': (data) => checkCompanyPrefix(data, 1),
  /* iso3166alpha2 */
  'country-letters': (data) =>
    whole(data, countryLetters.has(data), 'a two-letter country code of ISO 3166-1'),
  /* iso3166 */
  'country-number': (data) =>
    whole(data, countryNumbers.has(data), 'a three-digit country code of ISO 3166-1'),
  /* iso3166999 */
  'country-number-or-999': (data) =>
    whole(
      data,
      data === '999' || countryNumbers.has(data),
      'a three-digit country code of ISO 3166-1, or 999 for several countries',
    ),
  /* couponcode */
  'coupon-code': checkCouponCode,
  /* couponposoffer */
  'coupon-offer': checkCouponOffer,
  /* iso4217 */
  'currency-number': (data) =>
    whole(data, currencyNumbers.has(data), 'a three-digit currency code of ISO 4217'),
  /* yymmdd */
  date: (data, thisYear) => ofDate(readDate(data, thisYear, 'refused')),
  /* yymmd0 */
  'date-or-month': (data, thisYear) => ofDate(readDate(data, thisYear, 'month end')),
  /* yyyymmdd */
  'date-with-century': (data) => ofDate(readDateWithCentury(data)),
  /* hasnondigit */
  'has-non-digit': (data) => whole(data, /[^0-9]/.test(data), 'at least one character that is no digit'),
  /* hh */
  hour: (data) => atMost(data, 0, 23, 'an hour 00 to 23'),
  /* hhmi */
  'hour-and-minute': (data) =>
    atMost(data, 0, 23, 'an hour 00 to 23') ?? atMost(data, 2, 59, 'a minute 00 to 59'),
  /* hyphen */
  hyphen: (data) => whole(data, /^-+$/.test(data), 'a hyphen, which marks a temperature below zero'),
  /* importeridx */
  'importer-index': (data) =>
    whole(data, /^[-0-9A-Z_a-z]$/.test(data), 'one letter A-Z a-z, digit, hyphen or underscore'),
  /* latitude */
  latitude: (data) => whole(data, Number(data) <= 1_800_000_000, 'a latitude 0000000000 to 1800000000'),
  /* longitude */
  longitude: (data) => whole(data, Number(data) <= 3_600_000_000, 'a longitude 0000000000 to 3600000000'),
  /* mediatype */
  'media-type': (data) => whole(data, /^(0[1-9]|10|[89]\d)$/.test(data), 'a media type 01 to 10 or 80 to 99'),
  /* mi */
  minute: (data) => atMost(data, 0, 59, 'a minute 00 to 59'),
  /* nozeroprefix */
  'no-leading-zero': (data) => whole(data, !/^0./.test(data), 'a number without leading zeros'),
  /* nonzero */
  'not-all-zeros': (data) => whole(data, !/^0+$/.test(data), 'a number that is not zero'),
  /* packagetype */
  'package-type': (data) =>
    whole(data, packageTypes.has(data), 'a package type of UN/ECE Recommendation 21 or of GS1'),
  /* pcenc */
  'percent-encoding': checkPercentEncoding,
  /* pieceoftotal */
  'piece-of-total': checkPieceOfTotal,
  /* posinseqslash */
  'position-in-sequence': checkPositionInSequence,
  /* ss */
  second: (data) => atMost(data, 0, 59, 'a second 00 to 59'),
  /* iso5218 */
  sex: (data) => whole(data, /^[0129]$/.test(data), '0, 1, 2 or 9 (ISO/IEC 5218)'),
  /* winding */
  winding: (data) => whole(data, /^[019]$/.test(data), '0, 1 or 9 for the winding direction'),
  /* yesno */
  'yes-or-no': (data) => whole(data, /^[01]$/.test(data), '0 for no or 1 for yes'),
  /* zero */
  zero: (data) => whole(data, /^0+$/.test(data), '0'),
};

/** The first thing wrong with a component's content, or undefined. `thisYear` decides the century of dates. */
export function checkContent(
  name: ContentCheckName,
  data: string,
  thisYear: number,
): ContentFault | undefined {
  return checks[name](data, thisYear);
}

function whole(data: string, accepted: boolean, allowed: string): ContentFault | undefined {
  return accepted ? undefined : { offset: 0, length: data.length, allowed };
}

function ofDate(reading: DateReading): ContentFault | undefined {
  return reading.ok
    ? undefined
    : { offset: reading.offset, length: reading.length, allowed: reading.allowed };
}

function atMost(data: string, offset: number, most: number, allowed: string): ContentFault | undefined {
  return Number(data.slice(offset, offset + 2)) <= most ? undefined : { offset, length: 2, allowed };
}

/**
 * No register of company prefixes is at hand, nor wanted: as in the dictionary, the shortest prefix is four
 * digits, so at least four digits must stand there [P].
 */
function checkCompanyPrefix(data: string, from: number): ContentFault | undefined {
  const leading = data.slice(from, from + 4);
  const foreign = leading.search(/[^0-9]/);
  if (leading.length === 4 && foreign < 0) return undefined;
  const offset = foreign < 0 ? from : from + foreign;
  return {
    offset: Math.min(offset, data.length),
    length: foreign < 0 ? leading.length : 1,
    allowed: 'a GS1 company prefix, which begins with at least four digits',
  };
}

/** A percent sign must be followed by two hexadecimal digits. The value itself stays as it is written. */
function checkPercentEncoding(data: string): ContentFault | undefined {
  const offset = data.search(/%(?![0-9A-Fa-f]{2})/);
  if (offset < 0) return undefined;
  return {
    offset,
    length: Math.min(3, data.length - offset),
    allowed: 'after % two hexadecimal digits (write %25 for a percent sign)',
  };
}

/** Half the digits are the piece, half the total: neither zero, the piece not above the total. */
function checkPieceOfTotal(data: string): ContentFault | undefined {
  const half = data.length / 2;
  const piece = Number(data.slice(0, half));
  const total = Number(data.slice(half));
  return whole(data, piece > 0 && piece <= total, 'a piece number from 01 up to the total that follows it');
}

/** "2/3": position and end, no leading zeros, the position not beyond the end. */
function checkPositionInSequence(data: string): ContentFault | undefined {
  const parts = /^([1-9]\d*)\/([1-9]\d*)$/.exec(data);
  const accepted = parts !== null && Number(parts[1]) <= Number(parts[2]);
  return whole(data, accepted, 'position/end without leading zeros, the position not beyond the end');
}
