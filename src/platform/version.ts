import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsInt, Max, Min } from 'class-validator';

const mostVersions = 2_147_483_647;

/** The version of a row that a change was made from. */
export function Version(): PropertyDecorator {
  return applyDecorators(
    IsInt(),
    Min(1),
    Max(mostVersions),
    ApiProperty({ type: 'integer', minimum: 1, maximum: mostVersions }),
  );
}
