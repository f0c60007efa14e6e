import { expect, it } from 'vitest';
import type { ScanView } from '../../sessions/tray.views.js';
import { ServiceProblem } from '../service/problem.js';
import { differenceOf, refusalOf } from './difference.js';
import type { JudgedHere, WaitingWrite } from './waiting-write.js';

const scan = (judgedHere?: JudgedHere | null): WaitingWrite => ({
  id: 'scan',
  occurredAt: '2026-03-10T09:00:00.000Z',
  studioId: 'studio',
  sessionId: 'session',
  personId: 'mira',
  kind: 'scan',
  shown: { symbol: 'HU-118' },
  ...(judgedHere !== undefined && { judgedHere }),
});
const here = (verdict: JudgedHere['verdict'], containerId: string | null = 'bottle'): JudgedHere => ({
  verdict,
  label: 'Halden Umber',
  containerId,
  line: null,
});
const there = (verdict: ScanView['verdict'], containerId = 'bottle') =>
  ({
    verdict,
    reasons: [{ code: 'recalled', message: 'It is recalled.' }],
    thing: { containerId, label: 'Halden Umber' },
  }) as unknown as ScanView;

it.each<[JudgedHere['verdict'], ScanView['verdict']]>([
  ['admitted', 'admitted'],
  ['admitted', 'warned'],
  ['warned', 'admitted'],
  ['refused', 'refused'],
  ['question', 'refused'],
])('tells nothing when it lies on the tray by both or by neither: %s, %s', (one, other) => {
  expect(differenceOf(scan(here(one)), there(other))).toBeUndefined();
});

it.each<[JudgedHere['verdict'], ScanView['verdict']]>([
  ['admitted', 'refused'],
  ['warned', 'question'],
  ['refused', 'admitted'],
])('tells that it lies on the tray by one only: %s, %s', (one, other) => {
  expect(differenceOf(scan(here(one)), there(other))).toMatchObject({
    id: 'scan',
    label: 'Halden Umber',
    judgedHere: one,
    judgedThere: other,
    reasons: ['It is recalled.'],
  });
});

it('tells that it was taken for another container', () => {
  expect(differenceOf(scan(here('admitted')), there('admitted', 'other'))).toBeDefined();
  expect(differenceOf(scan(here('refused')), there('refused', 'other'))).toBeUndefined();
});

it('tells what became of something that was not known here, and not of what the service judged alone', () => {
  expect(differenceOf(scan(null), there('admitted'))).toMatchObject({
    judgedHere: null,
    judgedThere: 'admitted',
  });
  expect(differenceOf(scan(), there('refused'))).toBeUndefined();
});

it('tells every fault of what the service did not take, by what is known of it', () => {
  const problem = (faults: { field: string; message: string }[]) =>
    new ServiceProblem({ status: 422, code: 'unknown-symbol', title: '', detail: 'Nothing has it.', faults });
  expect(refusalOf(scan(null), problem([]))).toMatchObject({
    label: 'HU-118',
    judgedThere: null,
    reasons: ['Nothing has it.'],
  });
  const faults = [1, 2].map((each) => ({ field: 'symbol', message: `Fault ${each}.` }));
  expect(refusalOf(scan(here('admitted')), problem(faults))).toMatchObject({
    label: 'Halden Umber',
    reasons: ['Fault 1.', 'Fault 2.'],
  });
});
