import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const files = /`((?:src|tests|docker|migrations)\/[\w./-]+\.\w+)`/g;

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (page) => {
  it('names only files that are there', () => {
    const named = [...readFileSync(page, 'utf8').matchAll(files)].map(([, file = '']) => file);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((file) => !existsSync(file))).toEqual([]);
  });
});
