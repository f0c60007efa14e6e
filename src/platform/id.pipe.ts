import { Injectable, type PipeTransform } from '@nestjs/common';
import { isUUID } from 'class-validator';
import { Problem } from './problem.js';

/** An id in a path: a UUID in lower case. */
@Injectable()
export class IdPipe implements PipeTransform<string, string> {
  transform(value: string): string {
    if (isUUID(value)) return value.toLowerCase();
    throw new Problem(
      400,
      'malformed-request',
      `"${value.slice(0, 60)}" in the address is not an id. Ids are UUIDs, such as 01936f3a-5b7c-7d2e-8f10-2a3b4c5d6e7f.`,
    );
  }
}
