import { ValidateIf } from 'class-validator';

/** The field may be missing, but not null: unlike IsOptional, which lets null pass every other check. */
export function MayBeLeftOut(): PropertyDecorator {
  return ValidateIf((_, value) => value !== undefined);
}
