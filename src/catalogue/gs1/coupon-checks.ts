/**
 * The structure of North American coupon data, AI 8110 and 8112: lengths announced by a digit before each
 * field. A studio's products never carry them; they are read so that the table of identifiers is complete.
 * GS1 "North American Coupon Application Guideline" and "GS1 AI (8112) Coupon Data Specification", by way of
 * the reference checks of the GS1 Barcode Syntax Dictionary (Apache-2.0, GS1 AISBL) [P].
 */
import type { ContentFault } from './content-fault.js';
import { readDate } from './gs1-date.js';

/** AI 8110: the coupon code with its optional fields 1 to 6 and 9, in rising order. */
export function checkCouponCode(data: string, thisYear: number): ContentFault | undefined {
  const reader = new CouponReader(data);
  reader.digitsAnnounced('the company prefix', '0123456', 6);
  reader.digits('the offer code', 6);
  reader.digitsAnnounced('the save value', '12345', 0);
  reader.purchaseRequirement('first');
  if (reader.optionalField('1')) {
    reader.digit('the additional purchase rules', '0123');
    reader.purchaseRequirement('second');
    reader.companyPrefixOrNone('second');
  }
  if (reader.optionalField('2')) {
    reader.purchaseRequirement('third');
    reader.companyPrefixOrNone('third');
  }
  const expiry = reader.optionalField('3') ? reader.date('the expiry date', thisYear) : undefined;
  if (reader.optionalField('4')) {
    const start = reader.date('the start date', thisYear);
    if (start && expiry && start > expiry) {
      reader.refuse(reader.place - 6, 6, 'a start date not after the expiry date');
    }
  }
  if (reader.optionalField('5')) reader.digitsAnnounced('the serial number', '0123456789', 6);
  if (reader.optionalField('6')) reader.digitsAnnounced('the retailer', '1234567', 6);
  if (reader.optionalField('9')) {
    reader.digit('the save value code', '01256');
    reader.digit('the item the value applies to', '012');
    reader.digit('the store coupon flag', '0123456789');
    reader.digit('the multiply flag', '01');
  }
  return reader.end();
}

/** AI 8112: the positive offer file coupon. */
export function checkCouponOffer(data: string): ContentFault | undefined {
  const reader = new CouponReader(data);
  reader.digit('the format', '01');
  reader.digitsAnnounced('the funder', '0123456', 6);
  reader.digits('the offer code', 6);
  reader.digitsAnnounced('the serial number', '0123456789', 6);
  return reader.end();
}

/** Reads fields from left to right and keeps the first fault; after a fault every call does nothing. */
class CouponReader {
  place = 0;
  private fault: ContentFault | undefined;

  constructor(private readonly data: string) {
    const foreign = data.search(/[^0-9]/);
    if (foreign >= 0) this.refuse(foreign, 1, 'digits only in a coupon');
  }

  refuse(offset: number, length: number, allowed: string): void {
    this.fault ??= { offset, length, allowed };
  }

  digit(what: string, allowed: string): string {
    const seen = this.data.charAt(this.place);
    if (seen === '' || !allowed.includes(seen)) {
      this.refuse(this.place, seen.length, `for ${what} one of the digits ${allowed}`);
    }
    this.place += 1;
    return seen;
  }

  digits(what: string, count: number): string {
    const seen = this.data.slice(this.place, this.place + count);
    if (seen.length < count) this.refuse(this.place, seen.length, `for ${what} ${count} digits`);
    this.place += count;
    return seen;
  }

  /** A digit that announces how many digits follow, less `added`. */
  digitsAnnounced(what: string, allowed: string, added: number): void {
    const announced = this.digit(`the length of ${what}`, allowed);
    if (!this.fault) this.digits(what, Number(announced) + added);
  }

  purchaseRequirement(which: string): void {
    this.digitsAnnounced(`the ${which} purchase requirement`, '12345', 0);
    this.digit(`the ${which} purchase requirement code`, '012349');
    this.digits(`the ${which} purchase family code`, 3);
  }

  /** The digit 9 stands for "no company prefix". */
  companyPrefixOrNone(which: string): void {
    if (this.data.charAt(this.place) === '9') this.place += 1;
    else this.digitsAnnounced(`the ${which} purchase company prefix`, '01234569', 6);
  }

  date(what: string, thisYear: number): string | undefined {
    const start = this.place;
    const seen = this.digits(what, 6);
    if (this.fault) return undefined;
    const reading = readDate(seen, thisYear, 'refused');
    if (reading.ok) return reading.date;
    this.refuse(start + reading.offset, reading.length, `for ${what} ${reading.allowed}`);
    return undefined;
  }

  optionalField(indicator: string): boolean {
    if (this.fault || this.data.charAt(this.place) !== indicator) return false;
    this.place += 1;
    return true;
  }

  end(): ContentFault | undefined {
    if (this.place < this.data.length) {
      this.refuse(
        this.place,
        this.data.length - this.place,
        'the end of the coupon, or its next optional field',
      );
    }
    return this.fault;
  }
}
