import type { HowSure } from '../../identity/retention-presets.js';

export const effectivenessLevels = ['A', 'B', 'C', 'D', 'E'] as const;
export type EffectivenessLevel = (typeof effectivenessLevels)[number];

interface LevelRule {
  level: EffectivenessLevel;
  /** Of those who were to be told, how many are checked; null: agreed case by case. */
  percent: number | null;
  howSure: HowSure;
}

/**
 * Levels of effectiveness checks: proof that those who had to be told know of the recall. A and B were read in the
 * Investigations Operations Manual 2008 of the FDA, 7.3.2.2, which uses the same scale, and in a handbook that cites
 * 21 CFR 7.42 [S]; C, D and E are from memory [M]. B lies between C and A.
 */
export const levelRules: readonly LevelRule[] = [
  { level: 'A', percent: 100, howSure: 'S' },
  { level: 'B', percent: null, howSure: 'S' },
  { level: 'C', percent: 10, howSure: 'M' },
  { level: 'D', percent: 2, howSure: 'M' },
  { level: 'E', percent: 0, howSure: 'M' },
];

export const levelsSource = '21 CFR 7.42(b)(3)';
export const levelsCaveat = 'not verified against the official text';

export interface JudgedLevel extends LevelRule {
  /** How many are to be checked, rounded up; null where there is no per cent. */
  toCheck: number | null;
  met: boolean | null;
}

/**
 * Which levels are met when so many of those to be told were told.
 *
 * @param agreedPercent of level B, 11 to 99; null: nothing was agreed
 */
export function judgedLevels(toTell: number, told: number, agreedPercent: number | null): JudgedLevel[] {
  return levelRules.map((rule) => {
    const percent = rule.level === 'B' ? agreedPercent : rule.percent;
    // Of nobody, nobody; of anybody, at least one.
    const toCheck = percent === null ? null : Math.ceil((toTell * percent) / 100);
    return { ...rule, percent, toCheck, met: toCheck === null ? null : told >= toCheck };
  });
}

/** The highest level that is met; null: none. */
export function highestMet(levels: readonly JudgedLevel[]): EffectivenessLevel | null {
  return levels.find(({ met }) => met === true)?.level ?? null;
}

/** 0 to 100 with one decimal, rounded down so that 100 means all; null of nobody. */
export function percentOf(told: number, toTell: number): number | null {
  return toTell === 0 ? null : Math.floor((told * 1000) / toTell) / 10;
}
