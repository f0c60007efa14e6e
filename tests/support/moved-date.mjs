/**
 * Puts the clock of a process forward: loaded before everything else with `--import`, it lets `Date` tell a time that is as
 * many milliseconds ahead as the file of LOTWARD_TEST_CLOCK says at that moment. See `ServiceClock`.
 */
import { readFileSync } from 'node:fs';

const file = process.env.LOTWARD_TEST_CLOCK;
const RealDate = Date;
const now = () => RealDate.now() + Number(readFileSync(file, 'utf8'));

globalThis.Date = class extends RealDate {
  constructor(...given) {
    if (given.length === 0) super(now());
    else super(...given);
  }

  static now() {
    return now();
  }
};
