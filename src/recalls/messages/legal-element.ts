import type { HowSure } from '../../identity/retention-presets.js';

export type { HowSure };

/** One thing that the law asks a message about a recall to say. */
export interface LegalElement {
  code: string;
  /** What is asked, in our words. */
  asks: string;
  source: string;
  howSure: HowSure;
}
