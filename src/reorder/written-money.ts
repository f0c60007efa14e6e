/**
 * A sum as a person writes it in English, with the code of the currency: `EUR 1,234.50`.
 * @param minor whole minor units; how many make one of the currency is ISO 4217's [S, by Intl]
 */
export function writtenMoney(minor: number, currency: string): string {
  return `${currency} ${amount(minor, currency).toLocaleString('en-GB', digits(currency))}`;
}

/** A sum for a program: `1234.50`, without a thousands separator. */
export function plainMoney(minor: number, currency: string): string {
  return amount(minor, currency).toFixed(minorDigits(currency));
}

/** How many digits the minor unit of a currency has: 2 for EUR, 0 for JPY. */
export function minorDigits(currency: string): number {
  return (
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
  );
}

function amount(minor: number, currency: string): number {
  return minor / 10 ** minorDigits(currency);
}

function digits(currency: string): Intl.NumberFormatOptions {
  const fractionDigits = minorDigits(currency);
  return { minimumFractionDigits: fractionDigits, maximumFractionDigits: fractionDigits };
}
