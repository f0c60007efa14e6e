import { describe, expect, it } from 'vitest';
import { defaultPreference } from './default-preference.js';

describe('defaultPreference', () => {
  it('tells those who work in the studio of what is urgent, in turn', () => {
    for (const role of ['owner', 'manager', 'artist'] as const)
      expect(defaultPreference(role, false)).toMatchObject({ toldFrom: 'urgent', urgentTurn: 'in turn' });
  });

  it('tells an auditor and a chain manager nothing one by one, unless the studio put them in its order', () => {
    for (const role of ['auditor', 'chain manager'] as const) {
      expect(defaultPreference(role, false).toldFrom).toBe('never');
      expect(defaultPreference(role, true).toldFrom).toBe('urgent');
    }
  });

  it('sends a summary to those who run the studio, and leaves out nothing and no hour', () => {
    const summaries = (['owner', 'manager', 'artist', 'auditor', 'chain manager'] as const).map(
      (role) => defaultPreference(role, false).summary,
    );
    expect(summaries).toEqual(['daily', 'daily', 'never', 'never', 'never']);
    expect(defaultPreference('owner', false)).toMatchObject({ quietFrom: null, kindsLeftOut: [] });
  });
});
