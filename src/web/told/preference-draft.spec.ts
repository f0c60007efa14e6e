import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AlertPreferenceView } from '../../alerts/preferences/alert-preferences.views.js';
import { chosenBy, draftOf } from './preference-draft.js';

const time = fc.option(fc.constantFrom('00:00', '07:30', '23:59'));

const preferences: fc.Arbitrary<AlertPreferenceView> = fc.record({
  personId: fc.uuid(),
  toldFrom: fc.constantFrom('notice', 'warning', 'urgent', 'never'),
  urgentTurn: fc.constantFrom('at once', 'in turn'),
  summary: fc.constantFrom('daily', 'never'),
  summaryAt: time,
  quietFrom: time,
  quietUntil: time,
  kindsLeftOut: fc.uniqueArray(fc.constantFrom('low stock', 'use-by near', 'drill due', 'later kind')),
  isDefault: fc.boolean(),
  version: fc.option(fc.nat()),
});

describe('how one is told, while it is edited', () => {
  it('is handed in as it was read when nothing was edited', () => {
    fc.assert(
      fc.property(preferences, (preference) => {
        const { personId: _, isDefault: __, version, kindsLeftOut, ...chosen } = preference;
        expect(chosenBy(draftOf(preference), version)).toEqual({
          ...chosen,
          kindsLeftOut: [...kindsLeftOut].sort(),
          ...(version !== null && { version }),
        });
      }),
    );
  });
});
