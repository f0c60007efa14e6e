import { applyDecorators } from '@nestjs/common';
import { Type } from 'class-transformer';
import { ArrayMaxSize, ArrayMinSize, IsArray, IsObject, ValidateNested } from 'class-validator';

type DtoClass = () => new () => object;

/** An object validated against its DTO. An array is refused, which ValidateNested alone would let through. */
export function Nested(dto: DtoClass): PropertyDecorator {
  return applyDecorators(IsObject({ message: '$property must be an object' }), ValidateNested(), Type(dto));
}

/** A list of objects, each validated against its DTO. */
export function NestedList(dto: DtoClass, maximum: number, minimum = 0): PropertyDecorator {
  return applyDecorators(
    IsArray(),
    ArrayMinSize(minimum),
    ArrayMaxSize(maximum),
    IsObject({ each: true, message: 'each of $property must be an object' }),
    ValidateNested({ each: true }),
    Type(dto),
  );
}
