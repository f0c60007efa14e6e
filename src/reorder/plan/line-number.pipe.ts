import { Injectable, type PipeTransform } from '@nestjs/common';
import { Problem } from '../../platform/problem.js';

/** The number of a line in a path: a whole number from 1. */
@Injectable()
export class LineNumberPipe implements PipeTransform<unknown, number> {
  /** @param given the text of the path, or the number that validation made of it */
  transform(given: unknown): number {
    const value = String(given);
    if (/^[1-9]\d{0,5}$/.test(value)) return Number(value);
    throw new Problem(
      400,
      'malformed-request',
      `"${value.slice(0, 60)}" in the address is not the number of a line: a whole number from 1 is expected.`,
    );
  }
}
