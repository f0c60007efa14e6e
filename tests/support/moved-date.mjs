/**
 * Puts the clock of a process forward: loaded before everything else with `--import`, it lets `Date` tell the time that the
 * file of LOTWARD_TEST_CLOCK says at that moment: so many milliseconds ahead (`60000`, or behind, `-60000`), or one at which it stands still
 * (`=1795600000000`). See `ServiceClock`.
 */
import { readFileSync } from 'node:fs';

const file = process.env.LOTWARD_TEST_CLOCK;
const RealDate = Date;
const now = () => {
  const told = readFileSync(file, 'utf8');
  return told.startsWith('=') ? Number(told.slice(1)) : RealDate.now() + Number(told);
};

globalThis.Date = class extends RealDate {
  constructor(...given) {
    if (given.length === 0) super(now());
    else super(...given);
  }

  static now() {
    return now();
  }
};
