import {
  ownRetention,
  type RetentionChoice,
  type RetentionPreset,
  retentionPresets,
} from './retention-presets.js';

/** What a studio set. */
export interface RetentionSettings {
  /** Null: not chosen yet. */
  preset: RetentionChoice | null;
  years: number | null;
  /** The studio's own name for the law that binds it; null: none does, the years are its own decision. */
  law: string | null;
}

/** How long a studio keeps what it recorded of a client's visits. */
export interface RetentionPolicy {
  years: number;
  /** The law that asks for it; null: none does, the studio decided so. */
  law: string | null;
}

export const mostRetentionYears = 100;

const presetOf = (id: RetentionChoice | null): RetentionPreset | undefined =>
  retentionPresets.find((preset) => preset.id === id);

/** Null while the studio has not chosen: then nothing can be said of a floor, and nothing is erased. */
export function retentionPolicy({ preset: id, years, law }: RetentionSettings): RetentionPolicy | null {
  if (id === null) return null;
  const preset = presetOf(id);
  if (preset) return { years: Math.max(years ?? preset.years, preset.years), law: preset.source };
  return years === null ? null : { years, law };
}

export interface RetentionFault {
  field: 'retentionPreset' | 'retentionYears' | 'retentionLaw';
  message: string;
}

/**
 * What is wrong with a choice; null: nothing. A preset is a floor, so more years may be kept but not fewer; one that was
 * not verified decides nothing by itself, so the studio says its years too.
 */
export function retentionFault({ preset: id, years, law }: RetentionSettings): RetentionFault | null {
  if (id === null) {
    if (years === null && law === null) return null;
    const field = years === null ? 'retentionLaw' : 'retentionYears';
    return { field, message: `needs a retentionPreset beside it: one of the list, or "${ownRetention}"` };
  }
  if (id === ownRetention) {
    return years === null
      ? { field: 'retentionYears', message: 'must be given: how many years this studio keeps its records' }
      : null;
  }
  const preset = presetOf(id);
  if (!preset) return { field: 'retentionPreset', message: `is none of the list, nor "${ownRetention}"` };
  if (law !== null) {
    return {
      field: 'retentionLaw',
      message: `is that of the preset, ${preset.source}; leave it out, or choose "${ownRetention}"`,
    };
  }
  if (years === null && preset.howSure === 'M') {
    return {
      field: 'retentionYears',
      message: `must be given: the ${preset.years} of "${preset.id}" ${preset.years === 1 ? 'was' : 'were'} not verified against the official text. Look it up there, then say how many years you keep your records`,
    };
  }
  if (years !== null && years < preset.years) {
    return {
      field: 'retentionYears',
      message: `is ${years}, but "${preset.id}" asks for at least ${preset.years} (${preset.source}). Keep them as long, or choose "${ownRetention}" if another rule binds you`,
    };
  }
  return null;
}
