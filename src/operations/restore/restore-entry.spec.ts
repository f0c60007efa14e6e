import { describe, expect, it } from 'vitest';
import { restoredBackup } from './restore-entry.js';

describe('the backup of which an entry tells', () => {
  it('is named, and is some backup where the entry cannot be read', () => {
    const name = '20261125T081500Z-scheduled';
    expect(restoredBackup(JSON.stringify({ backup: name, rows: [] }))).toBe(`the backup ${name}`);
    for (const payload of ['{}', '{"backup":7}', '', 'null'])
      expect(restoredBackup(payload)).toBe('a backup');
  });
});
