/** [P] read in the primary text, [S] in a secondary source, [M] from memory. */
export type HowSure = 'P' | 'S' | 'M';

/** How long a place asks a studio to keep the record of a client's visit. */
export interface RetentionPreset {
  id: string;
  jurisdiction: string;
  /** A floor: earlier nothing may be erased on the studio's own motion. Never a date on which something is erased. */
  years: number;
  source: string;
  howSure: HowSure;
}

/**
 * Published floors. A studio takes the one that binds it, or says its own. None of these rules names a longer clock for
 * minors, or one that begins with their coming of age; a studio whose law does says its own number of years.
 */
export const retentionPresets = [
  {
    id: 'NEHA model code',
    jurisdiction: 'places that took over the NEHA Body Art Model Code',
    years: 3,
    source: 'NEHA Body Art Model Code, March 2024, §6.5',
    howSure: 'P',
  },
  {
    id: 'South Dakota',
    jurisdiction: 'South Dakota, United States',
    years: 2,
    source: 'ARSD 44:12:01:15',
    howSure: 'P',
  },
  {
    id: 'Albuquerque',
    jurisdiction: 'Albuquerque, New Mexico, United States',
    years: 3,
    source: 'rule of Albuquerque for body art',
    howSure: 'P',
  },
  {
    id: 'Howell',
    jurisdiction: 'Howell, Michigan, United States',
    years: 5,
    source: 'rule of Howell for body art',
    howSure: 'P',
  },
  {
    id: 'Victoria',
    jurisdiction: 'Victoria, Australia',
    years: 1,
    source: 'not verified against the official text',
    howSure: 'M',
  },
] as const satisfies readonly RetentionPreset[];

export type RetentionPresetId = (typeof retentionPresets)[number]['id'];

/** A studio's own number of years, beside the presets. */
export const ownRetention = 'own';
export const retentionChoices = [...retentionPresets.map(({ id }) => id), ownRetention] as const;
export type RetentionChoice = RetentionPresetId | typeof ownRetention;
