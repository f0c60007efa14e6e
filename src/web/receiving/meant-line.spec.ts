import { expect, it } from 'vitest';
import { newLine } from './line-draft.js';
import { meantLine } from './meant-line.js';
import type { ScannedGoods } from './scanned-goods.js';

const box: ScannedGoods = {
  text: '01095060001343591728103110CL-2041',
  symbologyIdentifier: ']d2',
  gtin: '09506000134352',
  count: 1,
  lotCode: 'CL-2041',
  useBy: '2028-10-31',
  useByPrecision: 'day',
  producedOn: null,
  serial: null,
};
const lines = [newLine('first', { scanned: box })];
const none = new Map<string, string[]>();

it('makes a line of what was not scanned yet', () => {
  expect(meantLine(box, [], none)).toEqual({ kind: 'new line' });
  expect(meantLine({ ...box, lotCode: 'CL-2042' }, lines, none)).toEqual({ kind: 'new line' });
  expect(meantLine({ ...box, useBy: '2029-01-31' }, lines, none)).toEqual({ kind: 'new line' });
  expect(meantLine({ ...box, gtin: '09506000134369' }, lines, none)).toEqual({ kind: 'new line' });
});

it('counts nothing in silence: the same symbol may be another box or the same one', () => {
  expect(meantLine(box, lines, none)).toEqual({ kind: 'asked', key: 'first' });
});

it('tells pieces apart by their serial numbers', () => {
  const seen = new Map([['first', ['A1']]]);
  expect(meantLine({ ...box, serial: 'A2' }, lines, seen)).toEqual({ kind: 'one more', key: 'first' });
  expect(meantLine({ ...box, serial: 'A1' }, lines, seen)).toEqual({ kind: 'same piece', key: 'first' });
});

it('takes the latest line of a number that stands on every lot', () => {
  const ean = { ...box, lotCode: null, useBy: null, useByPrecision: null };
  const two = [newLine('later', { scanned: ean }), newLine('earlier', { scanned: ean })];
  expect(meantLine(ean, two, none)).toEqual({ kind: 'asked', key: 'later' });
});

it('does not take a line for meant whose symbol was put aside', () => {
  expect(meantLine(box, [{ ...newLine('typed'), lotCode: 'CL-2041' }], none)).toEqual({ kind: 'new line' });
});
