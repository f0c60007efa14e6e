import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsISO8601 } from 'class-validator';

/** An instant, ISO 8601 with Z or an offset. Whether it lies too far ahead or back is judged by `occurredAt`. */
export function IsInstant(): PropertyDecorator {
  return applyDecorators(
    IsISO8601({ strict: true }, { message: '$property must be an instant such as 2026-03-01T09:30:00Z' }),
    ApiProperty({ format: 'date-time' }),
  );
}
