import { expect, it } from 'vitest';
import { markAt, marksOf } from './marks-of.js';

const reading: Parameters<typeof marksOf>[0] = {
  parts: [
    { kind: 'code', span: { start: 4, end: 6 }, value: 'A1', targets: [] },
    { kind: 'risk', span: { start: 10, end: 40 }, value: 'It may hurt.', targets: [] },
  ],
  remarks: [
    { code: 'code with O or I', span: { start: 4, end: 6 }, facts: {}, message: '' },
    { code: 'exception', span: { start: 50, end: 60 }, facts: { seen: 'except B2' }, message: '' },
    { code: 'nothing read', span: null, facts: {}, message: '' },
  ],
};
const marks = marksOf(reading);

it('marks what was read, and what has to be looked at where nothing was read', () => {
  expect(marks.map(({ kind, group, value }) => [kind, group, value])).toEqual([
    ['code', 'lots', 'A1'],
    ['risk', 'notice', 'It may hurt.'],
    [null, 'remark', 'except B2'],
  ]);
});

it.each([
  [{ start: 4, end: 6 }, 0],
  [{ start: 12, end: 14 }, 1],
  [{ start: 50, end: 60 }, 2],
  [{ start: 80, end: 90 }, undefined],
])('leads from %j to the mark there', (span, mark) => {
  expect(markAt(marks, span)).toBe(mark);
});
