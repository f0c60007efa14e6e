/** What a manager should know about a line besides its reasons, as codes with figures. */
export type DecisionNote =
  /** The smallest order holds more than can be used in date. */
  | {
      code: 'pack exceeds need';
      packUnits: number;
      inDateNeedUnits: number;
      expectedWasteUnits: number;
      wasteMinor: number;
    }
  | { code: 'price break taken'; fromPacks: number; savedMinor: number }
  | { code: 'minimum packs forced'; minimumPacks: number }
  /** The best day cannot be ordered on: an earlier one is taken. */
  | { code: 'order day forced earlier'; wanted: string; on: string }
  | { code: 'on hold ignored'; units: number }
  | { code: 'lead time beyond life'; leadTimeDays: number; lifeDays: number }
  | { code: 'no order day'; until: string }
  | { code: 'nothing fits the date'; lifeDays: number }
  /** A target of 100 % has no finite quantity: the largest need of all drawn futures is covered. */
  | { code: 'full target bounded'; units: number; paths: number }
  /** A target of 0 % makes missing units free: nothing is worth ordering. */
  | { code: 'target of zero' }
  | { code: 'too late'; shortChance: number; arrival: string }
  /** What will be missing is missing before anything ordered now could be here. */
  | { code: 'no order in time' }
  | { code: 'no offer' }
  | { code: 'no need' };

/** What was taken for granted, as codes with figures. */
export type DecisionAssumption =
  | { code: 'unit cost from offer'; unitMinor: number }
  | { code: 'unit cost unknown' }
  | { code: 'life on arrival unlimited' }
  | { code: 'setting out of range'; setting: string; given: number; taken: number }
  | { code: 'usual amount from expected uses'; units: number }
  | { code: 'usual amount unknown'; units: number }
  | { code: 'delivery shared'; lines: number; shareMinor: number }
  | { code: 'looked ahead'; horizonDays: number; tailDays: number };
