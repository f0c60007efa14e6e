import type { ContentFault } from './content-fault.js';
import { countryLetters } from './country-codes.js';

/**
 * International bank account numbers (AI 8007): a country of ISO 3166-1, digits and capital letters, and a
 * remainder of 1 modulo 97 when the first four characters are moved to the end and letters count from 10.
 * ISO 13616-1, by way of the reference checks of the GS1 Barcode Syntax Dictionary [P], which asks for more
 * than ten characters and knows no lengths by country.
 */
export function checkInternationalBankAccountNumber(data: string): ContentFault | undefined {
  if (data.length <= 10) {
    return { offset: 0, length: data.length, allowed: 'an IBAN of more than 10 characters' };
  }
  if (!countryLetters.has(data.slice(0, 2))) {
    return { offset: 0, length: 2, allowed: 'an IBAN that begins with a country code of ISO 3166-1' };
  }
  const foreign = data.search(/[^0-9A-Z]/);
  if (foreign >= 0) return { offset: foreign, length: 1, allowed: 'capital letters and digits in an IBAN' };
  let remainder = 0;
  for (const character of data.slice(4) + data.slice(0, 4)) {
    const value = Number.parseInt(character, 36);
    remainder = (remainder * (value < 10 ? 10 : 100) + value) % 97;
  }
  if (remainder !== 1) return { offset: 2, length: 2, allowed: 'the right check digits of the IBAN' };
  return undefined;
}
