/** What may be here at the end of one day: so many in a hundred of all courses that things may take have less. */
export interface FanDay {
  /** YYYY-MM-DD. */
  day: string;
  p5: number;
  p25: number;
  p50: number;
  p75: number;
  p95: number;
}

export interface FanSize {
  width: number;
  height: number;
  /** Room for what is written at the left and below, and for the signs above. */
  left: number;
  right: number;
  top: number;
  bottom: number;
}

export interface FanGeometry {
  /** SVG paths. */
  wide: string;
  narrow: string;
  median: string;
  /** Whole days to write below, and round amounts to write at the left. */
  days: { x: number; day: string }[];
  amounts: { y: number; amount: number }[];
  /** Where nothing is left. */
  zeroY: number;
  /** Where a day stands; undefined outside what is drawn. */
  xOf(day: string): number | undefined;
}

/** A day below takes so many pixels at least, an amount at the left so many. */
const dayPixels = 96;
const amountPixels = 44;

/**
 * Lays a fan out in pixels.
 * @param days at least two, in their order, not necessarily each day
 */
export function fanGeometry(days: readonly FanDay[], size: FanSize): FanGeometry {
  const { width, height, left, right, top, bottom } = size;
  const numbers = days.map(({ day }) => dayNumber(day));
  const first = numbers[0] ?? 0;
  const span = Math.max(1, (numbers.at(-1) ?? 0) - first);
  const across = width - left - right;
  const down = height - top - bottom;
  const steps = roundSteps(Math.max(...days.map(({ p95 }) => p95)), Math.floor(down / amountPixels));
  const highest = steps.at(-1) ?? 1;
  const xAt = (number: number) => left + ((number - first) / span) * across;
  const yAt = (amount: number) => top + (1 - amount / highest) * down;
  const xOf = (day: string) => {
    const number = dayNumber(day);
    return number < first || number > first + span ? undefined : xAt(number);
  };
  const line = (name: keyof Omit<FanDay, 'day'>) =>
    days.map((one, index) => `${rounded(xAt(numbers[index] ?? first))} ${rounded(yAt(one[name]))}`);
  const between = (low: keyof Omit<FanDay, 'day'>, high: keyof Omit<FanDay, 'day'>) =>
    `M${[...line(high), ...line(low).reverse()].join('L')}Z`;
  return {
    wide: between('p5', 'p95'),
    narrow: between('p25', 'p75'),
    median: `M${line('p50').join('L')}`,
    days: writtenDays(first, span, Math.max(1, Math.floor(across / dayPixels))).map((number) => ({
      x: xAt(number),
      day: dayOf(number),
    })),
    amounts: steps.map((amount) => ({ y: yAt(amount), amount })),
    zeroY: yAt(0),
    xOf,
  };
}

/** From 0 in equal steps of 1, 2 or 5 and zeros, at most so many, until the highest is covered. */
export function roundSteps(highest: number, atMost: number): number[] {
  const most = highest > 0 ? highest : 1;
  const least = most / Math.max(1, atMost);
  const power = 10 ** Math.floor(Math.log10(least));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((one) => one >= least * 0.999_999) ?? most;
  const count = Math.ceil(most / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => Number((index * step).toPrecision(12)));
}

/** Today and whole weeks after it, at most so many beside the first. */
function writtenDays(first: number, span: number, atMost: number): number[] {
  const weeks = Math.max(1, Math.ceil(span / atMost / 7));
  const step = span < 14 ? Math.max(1, Math.ceil(span / atMost)) : weeks * 7;
  return Array.from({ length: Math.floor(span / step) + 1 }, (_, index) => first + index * step);
}

const millisecondsADay = 86_400_000;

function dayNumber(day: string): number {
  return Math.round(Date.parse(`${day}T00:00:00Z`) / millisecondsADay);
}

function dayOf(number: number): string {
  return new Date(number * millisecondsADay).toISOString().slice(0, 10);
}

function rounded(pixels: number): number {
  return Math.round(pixels * 10) / 10;
}
