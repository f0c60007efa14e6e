const scientific = /^\d+([.,]\d+)?E[+-]?\d+$/i;
const decimal = /^(\d+)(?:[.,](\d+))?$/;

/** What follows the name of a column. */
type Read<Name extends string> = { [Key in Name]: number } | { fault: string };

/** Whether a spreadsheet turned a long number into one such as 9.50600E+12, whose digits are lost. */
export function isScientific(text: string): boolean {
  return scientific.test(text);
}

/** A whole number from 1. Separators of thousands differ from country to country, so there are none. */
export function readCount(text: string, most: number): Read<'count'> {
  if (/^\d{1,3}([.,' ]\d{3})+$/.test(text)) {
    return { fault: `${text} may be read in two ways; write ${text.replace(/\D/g, '')} if that is meant` };
  }
  const count = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (!Number.isInteger(count)) return { fault: `"${text.slice(0, 40)}" is not a whole number` };
  return count < 1 || count > most ? { fault: `${text} is not from 1 to ${most}` } : { count };
}

/**
 * A volume in millilitres, such as `10`, `7.5 ml` or `7,5`, in microlitres. With three digits after it a point may be a
 * separator of thousands.
 */
export function readMillilitres(text: string): Read<'microlitres'> {
  const number = readDecimal(text.replace(/\s*ml$/i, ''));
  if ('fault' in number) return { fault: `${number.fault}, in millilitres` };
  return { microlitres: Math.round(number.value * 1_000) };
}

/** A share in percent, 0 to 100. */
export function readPercent(text: string): Read<'percent'> {
  const number = readDecimal(text.replace(/\s*%$/, ''));
  if ('fault' in number) return number;
  return number.value > 100 ? { fault: `${text} is more than 100 %` } : { percent: number.value };
}

function readDecimal(text: string): Read<'value'> {
  const match = decimal.exec(text);
  if (match === null) return { fault: `"${text.slice(0, 40)}" is not a number; write it as 7.5` };
  const [, whole = '', fraction = ''] = match;
  if (fraction.length > 2) {
    return {
      fault: `${text} may be read in two ways; write ${whole}${fraction} or ${whole}.${fraction.slice(0, 2)}`,
    };
  }
  return whole.length > 6
    ? { fault: `${text} is too large` }
    : { value: Number(`${whole}.${fraction || '0'}`) };
}
