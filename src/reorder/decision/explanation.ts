import type { RangeChoice } from './range-choice.js';

/** One part of why a line is as it is; units as in the decision. */
export type Reason =
  | { code: 'booked need'; units: number; sessions: number; until: string }
  | { code: 'course need'; units: number; courses: number; until: string }
  | { code: 'touch-ups owed'; units: number; sessions: number; until: string }
  | { code: 'unforeseen need'; units: number; unitsPerWeek: number; until: string }
  | { code: 'no need expected'; until: string }
  | { code: 'in stock'; units: number; containers: number; opened: number }
  | { code: 'expires'; units: number; wasteMinor: number; firstOn: string }
  | { code: 'on the way'; units: number; likely: string }
  | { code: 'on hold'; units: number }
  | { code: 'runs short'; chance: number; on: string | null; until: string }
  | { code: 'lasts'; chance: number; until: string }
  | { code: 'lead time'; typicalDays: number; days95: number }
  | { code: 'order'; packs: number; containers: number; units: number; on: string; priceMinor: number }
  | { code: 'covers'; days: number; until: string; chanceAfter: number }
  | { code: 'why not less'; packs: number; moreMinor: number; unmetUnits: number; unmetUnitsMore: number }
  | { code: 'why not more'; packs: number; moreMinor: number; wasteUnits: number; wasteUnitsMore: number }
  | { code: 'why not earlier'; on: string; moreMinor: number }
  | { code: 'why not later'; on: string; moreMinor: number }
  | {
      code: 'pack exceeds need';
      packUnits: number;
      needUnits: number;
      wasteUnits: number;
      wasteMinor: number;
    }
  | {
      code: 'range';
      choice: RangeChoice;
      chosenBy: 'manager' | 'cost';
      costPerYearMinor: number;
      otherwise: { choice: RangeChoice; costPerYearMinor: number }[];
    }
  | { code: 'booked in time'; share: number; days95: number }
  | { code: 'appointments covered'; sessions: number; until: string }
  | { code: 'no offer' };
