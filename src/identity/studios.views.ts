import type { HowSure, RetentionChoice, RetentionPresetId } from './retention-presets.js';

/** How long clients' records are kept. A floor: earlier nothing is erased on the studio's own motion, later nothing by itself. */
export class RetentionView {
  years: number;
  /** The law that asks for it; null: none does, the studio decided so. */
  law: string | null;
}

export class StudioView {
  id: string;
  name: string;
  /** IANA name. */
  timeZone: string;
  /** ISO 4217 code. */
  currency: string;
  /** Local time of the daily sweep, HH:MM. */
  morning: string;
  useByNearDays: number;
  openedLifeEndingDays: number;
  /** ISO 8601 duration taken where a label gives no opened life, shown as an assumption; null: none is taken. */
  assumedOpenedLife: string | null;
  houseBlends: 'off' | 'allowed';
  /** Whose rule on keeping clients' records binds the studio; null: not chosen yet, and no client can be erased. */
  retentionPreset: RetentionChoice | null;
  /** Years as the studio set them; null: those of the preset. */
  retentionYears: number | null;
  /** The law as the studio named it; null: that of the preset, or none. */
  retentionLaw: string | null;
  /** What follows from the three. */
  retention: RetentionView | null;
  /** Whether everybody who signs in at a browser of their own needs a passkey. */
  passkeysRequired: boolean;
  /** How people reach the studio, as messages about recalls say it; null: nothing is said. */
  contactPoint: string | null;
  version: number;
}

export class AddedStudioView {
  studioId: string;
}

/** A published floor that a studio can take for its own. */
export class RetentionPresetView {
  id: RetentionPresetId;
  jurisdiction: string;
  years: number;
  source: string;
  /** P: read in the primary text, S: in a secondary source, M: from memory, not verified against the official text. */
  howSure: HowSure;
}
