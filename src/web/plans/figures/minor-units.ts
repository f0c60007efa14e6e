/** An amount of money in whole minor units of its currency. @returns null for nothing, undefined for what is no amount of it */
export function minorUnits(text: string, currency: string): number | null | undefined {
  const written = text.trim().replace(',', '.');
  if (written === '') return null;
  const decimals = decimalsOf(currency);
  if (!/^\d{1,7}(\.\d+)?$/.test(written) || (written.split('.')[1]?.length ?? 0) > decimals) return undefined;
  return Math.round(Number(written) * 10 ** decimals);
}

/** The same as it is typed in a language: `12.50`, `12,50`. */
export function majorText(minor: number, currency: string, language: string): string {
  const decimals = decimalsOf(currency);
  return (minor / 10 ** decimals).toLocaleString(language, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
  });
}

/** As many as the currency has: 2 for EUR, 0 for JPY (ISO 4217, as Intl knows it). */
function decimalsOf(currency: string): number {
  const format = new Intl.NumberFormat('en', { style: 'currency', currency });
  return format.resolvedOptions().maximumFractionDigits ?? 2;
}
