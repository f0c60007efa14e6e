type Say = (written: Record<string, string>) => string;

const one = (count: string | undefined, single: string, several: string) =>
  `${count} ${count === '1' ? single : several}`;

/**
 * The sentences of those reasons, remarks and assumptions of a plan that hold money, dates or shares, so that a page writes
 * them in one way; the others are told in the service's own English sentence.
 */
export const planReasons: Record<string, Say | undefined> = {
  'booked need': ({ units, sessions, booked, until }) =>
    `Booked until ${until}: ${one(booked, 'session', 'sessions')}, of which about ${sessions} will take it: ${units} together.`,
  'course need': ({ units, courses, until }) =>
    `Until ${until}: ${one(courses, 'training course', 'training courses')} with about ${units}.`,
  'touch-ups owed': ({ units, sessions, until }) =>
    `Still to be booked until ${until}: about ${one(sessions, 'touch-up', 'touch-ups')} with about ${units}.`,
  'unforeseen need': ({ units, unitsPerWeek, until }) =>
    `What nobody has booked yet needs about ${unitsPerWeek} a week, ${units} until ${until}.`,
  'no need expected': ({ until }) => `No need is expected until ${until}.`,
  expires: ({ units, wasteMinor, firstOn }) =>
    `About ${units} of what is here or coming will probably expire unused (${wasteMinor}), the first on ${firstOn}.`,
  'on the way': ({ units, likely }) => `On the way: ${units}, probably here by ${likely}.`,
  'runs short': ({ chance, on, until }) =>
    `Chance that it runs short until ${until} without an order: ${chance}; probably around ${on}.`,
  lasts: ({ chance, until }) => `Chance that what is here and coming lasts until ${until}: ${chance}.`,
  order: ({ packs, units, on, priceMinor }) => `Order ${packs} (${units}) on ${on}, for ${priceMinor}.`,
  covers: ({ days, until }) =>
    `Once it is here, the stock lasts about ${one(days, 'day', 'days')}, until ${until}.`,
  'why not less': ({ packs, moreMinor, unmetUnits }) =>
    `Only ${packs}: expected to cost ${moreMinor} more, with ${unmetUnits} of the need not met.`,
  'why not more': ({ packs, moreMinor, wasteUnits }) =>
    `${packs} instead: expected to cost ${moreMinor} more, with ${wasteUnits} wasted.`,
  'why not earlier': ({ on, moreMinor }) =>
    `To order on ${on} already is expected to cost ${moreMinor} more.`,
  'why not later': ({ on, moreMinor }) => `To order only on ${on} is expected to cost ${moreMinor} more.`,
  'pack exceeds need': ({ packUnits, wasteMinor }) =>
    `The smallest order holds ${packUnits}, more than can be used in date: some of it will probably be wasted (${wasteMinor}).`,
  range: ({ choice, costPerYearMinor, otherwise }) =>
    `Chosen: ${choice}, ${costPerYearMinor} a year. Otherwise: ${otherwise}.`,
  'price break taken': ({ fromPacks, savedMinor }) =>
    `The price from ${fromPacks} on is reached, which saves ${savedMinor}.`,
  'order day forced earlier': ({ wanted, on }) => `${wanted} is no order day: it is ordered on ${on}.`,
  'no order day': ({ until }) => `The supplier takes no orders until ${until}.`,
  'too late': ({ shortChance, arrival }) =>
    `Chance that some of it is missing before the order arrives, probably on ${arrival}: ${shortChance}.`,
  'full target bounded': ({ units, paths }) =>
    `A target of 100% has no finite quantity: the largest need of ${paths} possible courses is covered, ${units}.`,
  'target of zero': () =>
    'With a target of 0% nothing that is missing costs anything, and nothing is worth ordering.',
  'delivery shared': ({ lines, shareMinor }) =>
    `A delivery is taken to be shared by ${one(lines, 'line', 'lines')}: ${shareMinor} each.`,
  'service target assumed': ({ perMille }) =>
    `No service target is set: ${perMille} of the need is to be met.`,
  'order cost assumed': ({ costMinor }) => `No cost of placing an order is set: ${costMinor} is taken.`,
  'holding cost assumed': ({ perMille }) =>
    `No cost of holding stock is set: ${perMille} of its price a year is taken.`,
  'changed by the basket': ({ packs, on, ownPacks, ownOn }) =>
    `It is ordered together with other products of the supplier, ${packs} on ${on}; by itself it would be ${ownPacks} on ${ownOn}, with which the following compares.`,
};
