import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { Transform } from 'class-transformer';
import { IsUUID } from 'class-validator';

function lowerCase(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(lowerCase);
  return typeof value === 'string' ? value.toLowerCase() : value;
}

/** The id of something, a UUID in lower case; with `each`, a list of them. */
export function NamedId(options: { each?: boolean } = {}): PropertyDecorator {
  const message = options.each
    ? 'each of $property must be an id, a UUID'
    : '$property must be an id, a UUID';
  return applyDecorators(
    Transform(({ value }) => lowerCase(value)),
    IsUUID(undefined, { ...options, message }),
    ...(options.each ? [] : [ApiProperty({ format: 'uuid' })]),
  );
}
