import { hasEnded } from '../stock/container-transitions.js';
import { type SafetyRefusal, safetyRefusals } from './tray-rules.js';
import type { TrayThing } from './tray-thing.js';

const words: Record<SafetyRefusal, string> = {
  recalled: 'It was recalled after it was laid out. Do not use it.',
  'on hold': 'It was put on hold after it was laid out. Do not use it until the hold is released.',
  expired: 'It has expired since it was laid out.',
  'open too long': 'Its opened life has ended since it was laid out.',
  'practice only': 'It was set aside for practice skin.',
};

export interface RefusedNow {
  code: SafetyRefusal | 'none left';
  /** A sentence for the artist. */
  message: string;
}

/**
 * Why something that was admitted to a tray may not be used any more, the worst first; empty: it may. What is gone by the
 * record is told too.
 *
 * @param at ISO 8601 instant
 * @param timeZone IANA time zone of the studio
 */
export function refusedNow(thing: TrayThing, at: string, timeZone: string): RefusedNow[] {
  const refused: RefusedNow[] = safetyRefusals(thing, at, timeZone).map((code) => ({
    code,
    message: words[code],
  }));
  if (hasEnded(thing.state)) {
    const message = `It was recorded as ${thing.state} after it was laid out. Take it off the tray, or say at completion what was used of it.`;
    refused.push({ code: 'none left', message });
  }
  return refused;
}
