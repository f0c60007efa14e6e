/** An amount of money: `€12.50`. @param minor minor units of the currency; a part of one, as expectations have it, is rounded */
export function writtenMoney(minor: number, currency: string, language: string): string {
  const format = new Intl.NumberFormat(language, { style: 'currency', currency });
  const decimals = format.resolvedOptions().maximumFractionDigits ?? 2;
  // Never minus nothing.
  return format.format((Math.round(minor) || 0) / 10 ** decimals);
}

/** The same with its sign, for a difference: `+€12.50`. */
export function writtenMoneyChange(minor: number, currency: string, language: string): string {
  const format = new Intl.NumberFormat(language, { style: 'currency', currency, signDisplay: 'exceptZero' });
  const decimals = format.resolvedOptions().maximumFractionDigits ?? 2;
  return format.format((Math.round(minor) || 0) / 10 ** decimals);
}
