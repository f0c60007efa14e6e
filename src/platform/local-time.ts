import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Matches } from 'class-validator';

/** A time of day by the studio's clocks, `HH:MM`. */
export function IsLocalTime(): PropertyDecorator {
  return applyDecorators(
    Matches(/^([01]\d|2[0-3]):[0-5]\d$/, { message: '$property must be a time of day such as 07:00' }),
    ApiProperty({ pattern: '^([01]\\d|2[0-3]):[0-5]\\d$', example: '07:00' }),
  );
}
