/**
 * The currencies the browser knows by ISO 4217 code, and the one that is set, with their names in a language.
 * @param language BCP 47
 */
export function currencies(language: string, set: string): { value: string; label: string }[] {
  return [...new Set([...Intl.supportedValuesOf('currency'), set])]
    .sort()
    .map((value) => ({ value, label: currencyName(value, language) }));
}

/** `EUR, Euro` */
export function currencyName(code: string, language: string): string {
  const name = new Intl.DisplayNames(language, { type: 'currency' }).of(code);
  return name === undefined || name === code ? code : `${code}, ${name}`;
}
