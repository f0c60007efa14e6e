import { type ValidationError, ValidationPipe } from '@nestjs/common';
import { type FieldFault, faultsProblem } from './problem.js';

function faultsOf(errors: ValidationError[], parent = ''): FieldFault[] {
  return errors.flatMap((error) => {
    const field = parent === '' ? error.property : `${parent}.${error.property}`;
    const own = Object.values(error.constraints ?? {})
      .slice(0, 1)
      .map((message) => ({ field, message }));
    return [...own, ...faultsOf(error.children ?? [], field)];
  });
}

/** Bodies and queries are validated against their DTO; an unknown field is a fault, never ignored. */
export function makeValidationPipe(): ValidationPipe {
  return new ValidationPipe({
    transform: true,
    whitelist: true,
    forbidNonWhitelisted: true,
    forbidUnknownValues: true,
    stopAtFirstError: true,
    exceptionFactory: (errors) => faultsProblem(faultsOf(errors)),
  });
}
