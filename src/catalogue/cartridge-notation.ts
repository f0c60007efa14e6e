/** How the needles of a cartridge or hand blade are grouped. */
export type NeedleGrouping =
  | 'round liner'
  | 'round shader'
  | 'magnum'
  | 'stacked magnum'
  | 'curved magnum'
  | 'flat'
  | 'slope'
  | 'hand blade';

/** Length of the ground needle tip. */
export type NeedleTaper = 'short' | 'medium' | 'long' | 'extra long';

export interface CartridgeConfiguration {
  /** Number of needles: 1 to 99. */
  points: number;
  grouping: NeedleGrouping;
  /** Needle diameter in hundredths of a millimetre; null when the notation does not say. */
  diameterHundredthsMillimetre: number | null;
  /** Null when the notation does not say. */
  taper: NeedleTaper | null;
}

export interface CartridgeNotationError {
  error: {
    code:
      | 'cartridge notation not understood'
      | 'cartridge diameter ambiguous'
      | 'cartridge diameter unknown'
      | 'cartridge points ambiguous'
      | 'cartridge points out of range';
    message: string;
    /** What the text could mean, where it could mean more than one thing; else empty. */
    readings: string[];
  };
}

/** Trade numbers for diameters, in hundredths of a millimetre [S]. */
const diameterNumbers: Readonly<Record<string, number>> = { '06': 20, '08': 25, '10': 30, '12': 35 };
/** 0.40 mm is written 13 by some and 14 by others [S]: neither is taken. */
const ambiguousNumbers: readonly string[] = ['13', '14'];
/** Thinner and thicker needles than these are taken for slips. 0.18 mm has no number and is written out. */
export const leastDiameterHundredthsMillimetre = 15;
export const mostDiameterHundredthsMillimetre = 60;
export const mostPoints = 99;

/** Ways to write a grouping [S]; slope and hand blade have no short form of their own and are written out [M]. */
const groupings: Readonly<Record<string, NeedleGrouping>> = {
  RL: 'round liner',
  RS: 'round shader',
  M: 'magnum',
  M1: 'magnum',
  M2: 'stacked magnum',
  RM: 'curved magnum',
  CM: 'curved magnum',
  F: 'flat',
  SLOPE: 'slope',
  BLADE: 'hand blade',
};
/** ST is attested [S]; the other tapers follow its pattern [C]. */
const tapers: Readonly<Record<string, NeedleTaper>> = {
  ST: 'short',
  MT: 'medium',
  LT: 'long',
  XLT: 'extra long',
};

const tail = '(RL|RS|RM|CM|M1|M2|M|F|SLOPE|BLADE) ?(XLT|ST|MT|LT)?';
const withSlash = new RegExp(`^(?:(0?[.,]\\d{1,2}) ?(?:MM)?|(\\d{1,3})) ?/ ?(\\d{1,3}) ?${tail}$`);
const compact = new RegExp(`^(\\d{1,6}) ?${tail}$`);
const longestNotation = 40;
const howToWrite =
  'Write diameter, points and grouping, as in 1207RL, or the diameter in millimetres before a slash, as in ' +
  '0.30/1RL; the diameter may be left out, as in 3RL. Groupings are RL, RS, M, M2, RM, F, slope and blade; a ' +
  'taper ST, MT, LT or XLT may follow.';

/**
 * Reads a cartridge in trade notation: `1207RL`, `1203RLST`, `0.30/1RL`, `30/1RL`, `3RL`. No standards body owns
 * this notation. What it does not say stays unknown: a missing diameter or taper is null, never a default.
 *
 * @returns the configuration, or an error with a message for the person and, where the text can be read in more
 *   than one way, the readings
 */
export function readCartridge(text: string): CartridgeConfiguration | CartridgeNotationError {
  const shown = text.trim();
  const notation = shown.length > longestNotation ? '' : shown.toUpperCase().replace(/\s+/g, ' ');
  const slash = withSlash.exec(notation);
  if (slash !== null) {
    const [, millimetres, hundredths, points = '', grouping, taper] = slash;
    const diameter =
      millimetres === undefined
        ? diameterFromHundredths(hundredths ?? '', points, shown)
        : diameterFromMillimetres(millimetres, shown);
    return typeof diameter === 'number' ? configured(diameter, points, grouping, taper, shown) : diameter;
  }
  const short = compact.exec(notation);
  if (short !== null) {
    const [, digits = '', grouping, taper] = short;
    if (digits.length <= 2) return configured(null, digits, grouping, taper, shown);
    if (digits.length !== 4) return pointsAmbiguous(digits, shown);
    const points = digits.slice(2);
    const diameter = diameterFromNumber(digits.slice(0, 2), points, shown);
    return typeof diameter === 'number' ? configured(diameter, points, grouping, taper, shown) : diameter;
  }
  return failed(
    'cartridge notation not understood',
    `"${shown.slice(0, longestNotation)}" is not a cartridge notation. ${howToWrite}`,
  );
}

/**
 * Prints a configuration in the notation that `readCartridge` reads back to an equal configuration. A diameter
 * with a trade number is printed with it (`1207RL`), another one in millimetres (`0.18/3RL`), none not at all.
 *
 * @throws RangeError when points or diameter cannot be written
 */
export function printCartridge(configuration: CartridgeConfiguration): string {
  const { points, diameterHundredthsMillimetre: diameter } = configuration;
  if (!pointsBelieved(points)) throw new RangeError(`Points must be a whole number from 1 to ${mostPoints}.`);
  if (diameter !== null && !diameterBelieved(diameter)) throw new RangeError(`${diameterRange()}.`);
  const tail = printedGrouping(configuration.grouping) + printedTaper(configuration);
  if (diameter === null) return `${points}${tail}`;
  const number = Object.keys(diameterNumbers).find((key) => diameterNumbers[key] === diameter);
  if (number !== undefined) return `${number}${String(points).padStart(2, '0')}${tail}`;
  return `0.${diameter}/${points}${tail}`;
}

function printedGrouping(grouping: NeedleGrouping): string {
  switch (grouping) {
    case 'round liner':
      return 'RL';
    case 'round shader':
      return 'RS';
    case 'magnum':
      return 'M';
    case 'stacked magnum':
      return 'M2';
    case 'curved magnum':
      return 'RM';
    case 'flat':
      return 'F';
    case 'slope':
      return ' slope';
    case 'hand blade':
      return ' blade';
  }
}

function printedTaper({ grouping, taper }: CartridgeConfiguration): string {
  const written = Object.keys(tapers).find((key) => tapers[key] === taper);
  if (written === undefined) return '';
  return grouping === 'slope' || grouping === 'hand blade' ? ` ${written}` : written;
}

function configured(
  diameterHundredthsMillimetre: number | null,
  pointsText: string,
  groupingText: string | undefined,
  taperText: string | undefined,
  shown: string,
): CartridgeConfiguration | CartridgeNotationError {
  const points = Number(pointsText);
  if (!pointsBelieved(points)) {
    return failed(
      'cartridge points out of range',
      `${shown} names ${points} points. Allowed are 1 to ${mostPoints}. Compare with the label.`,
    );
  }
  const grouping = groupings[groupingText ?? ''];
  if (grouping === undefined) {
    return failed('cartridge notation not understood', `${shown} names no known grouping. ${howToWrite}`);
  }
  const taper = taperText === undefined ? null : (tapers[taperText] ?? null);
  return { points, grouping, diameterHundredthsMillimetre, taper };
}

function diameterFromNumber(number: string, points: string, shown: string): number | CartridgeNotationError {
  if (ambiguousNumbers.includes(number)) return diameterAmbiguous(number, points, shown);
  return (
    diameterNumbers[number] ??
    failed(
      'cartridge diameter unknown',
      `${shown} names the diameter number ${number}. Known are 06 (0.20 mm), 08 (0.25 mm), 10 (0.30 mm) and ` +
        `12 (0.35 mm). Write any other diameter in millimetres, as in 0.18/${Number(points)}RL.`,
    )
  );
}

/** Before a slash, 06 to 14 could be a diameter number as well as hundredths of a millimetre. */
function diameterFromHundredths(
  text: string,
  points: string,
  shown: string,
): number | CartridgeNotationError {
  if (ambiguousNumbers.includes(text)) return diameterAmbiguous(text, points, shown);
  const numbered = diameterNumbers[text.padStart(2, '0')];
  if (numbered !== undefined) {
    return failed(
      'cartridge diameter ambiguous',
      `${shown} can be read with the diameter number ${text} (${inMillimetres(numbered)}) or with ${text} hundredths of ` +
        `a millimetre. Write the diameter in millimetres, as in 0.${numbered}/${Number(points)}RL.`,
      [`diameter number ${text}: ${inMillimetres(numbered)}`, `hundredths: ${inMillimetres(Number(text))}`],
    );
  }
  return believed(Number(text), shown);
}

function diameterFromMillimetres(text: string, shown: string): number | CartridgeNotationError {
  const decimals = text.replace(/^0?[.,]/, '');
  return believed(Number(decimals.padEnd(2, '0')), shown);
}

function believed(diameter: number, shown: string): number | CartridgeNotationError {
  if (diameterBelieved(diameter)) return diameter;
  return failed(
    'cartridge diameter unknown',
    `${shown} names a diameter of ${inMillimetres(diameter)}. ${diameterRange()}. Compare with the label.`,
  );
}

function diameterAmbiguous(number: string, points: string, shown: string): CartridgeNotationError {
  const other = number === '13' ? '14' : '13';
  const readings = [
    `diameter number ${number} of makers who write 0.40 mm as ${number}: 0.40 mm`,
    `diameter number ${number} of makers who write 0.40 mm as ${other}: another diameter than 0.40 mm`,
  ];
  return failed(
    'cartridge diameter ambiguous',
    `${shown} has the diameter number ${number}. Some makers write 0.40 mm as 13, others as 14, so ${number} is ` +
      `0.40 mm with some and another diameter with others. Look on the box for millimetres and write them, as in ` +
      `0.40/${Number(points)}RL.`,
    readings,
  );
}

function pointsAmbiguous(digits: string, shown: string): CartridgeNotationError {
  const readings =
    digits.length === 3
      ? [
          `diameter number ${digits.slice(0, 2)}, ${Number(digits.slice(2))} points`,
          `diameter number 0${digits.slice(0, 1)}, ${Number(digits.slice(1))} points`,
          `${Number(digits)} points`,
        ]
      : [];
  return failed(
    'cartridge points ambiguous',
    `${shown} begins with ${digits.length} digits. Allowed are two for the diameter and two for the points, as in ` +
      '1207RL, or one or two for the points alone, as in 3RL. Write it so, or the diameter in millimetres before a ' +
      'slash.',
    readings,
  );
}

function pointsBelieved(points: number): boolean {
  return Number.isInteger(points) && points >= 1 && points <= mostPoints;
}

function diameterBelieved(diameter: number): boolean {
  return (
    Number.isInteger(diameter) &&
    diameter >= leastDiameterHundredthsMillimetre &&
    diameter <= mostDiameterHundredthsMillimetre
  );
}

function diameterRange(): string {
  const least = inMillimetres(leastDiameterHundredthsMillimetre);
  return `Allowed diameters run from ${least} to ${inMillimetres(mostDiameterHundredthsMillimetre)}`;
}

function inMillimetres(hundredths: number): string {
  return `${(hundredths / 100).toFixed(2)} mm`;
}

function failed(
  code: CartridgeNotationError['error']['code'],
  message: string,
  readings: string[] = [],
): CartridgeNotationError {
  return { error: { code, message, readings } };
}
