import { expect, it } from 'vitest';
import { fileKindOf } from './file-kind.js';

it.each([
  ['<?xml version="1.0"?><report/>', 'safety gate xml'],
  ['\uFEFF  <report/>', 'safety gate xml'],
  ['{"results": []}', 'enforcement json'],
  ['\n[{"status": "Ongoing"}]', 'enforcement json'],
  ['maker,product,lot\nHalden,Umber,A1', 'csv'],
  ['', 'csv'],
] as const)('knows %j for %s', (text, kind) => {
  expect(fileKindOf(text)).toBe(kind);
});
