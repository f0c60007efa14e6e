import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsISO8601, Matches } from 'class-validator';

/** A calendar day that exists, `YYYY-MM-DD`. */
export function IsPlainDate(): PropertyDecorator {
  const message = '$property must be a day that exists, such as 2026-03-01';
  return applyDecorators(
    Matches(/^\d{4}-\d{2}-\d{2}$/, { message }),
    IsISO8601({ strict: true }, { message }),
    ApiProperty({ format: 'date' }),
  );
}
