import { ValidateBy } from 'class-validator';

export const eitherVolumeOrDrops = 'give the volume either in microlitres or in drops';

/** On `microlitres`: no drops stand beside it. Of two amounts that may differ nobody could say which was meant. */
export function InsteadOfDrops(): PropertyDecorator {
  return ValidateBy({
    name: 'insteadOfDrops',
    validator: {
      validate: (_, context) => (context?.object as { drops?: number } | undefined)?.drops === undefined,
      defaultMessage: () => eitherVolumeOrDrops,
    },
  });
}
