import { describe, expect, it } from 'vitest';
import { type LineToSettle, type SaidOfLine, settleTray } from './completion-rules.js';

const needle = (lineId: string, given: Partial<LineToSettle> = {}): LineToSettle => ({
  lineId,
  containerId: `box of ${lineId}`,
  label: 'Corvin 1207RL',
  stockForm: 'pieces',
  pieces: 1,
  usedBesides: false,
  holds: [],
  ...given,
});
const bottle = (lineId: string, given: Partial<LineToSettle> = {}): LineToSettle => ({
  ...needle(lineId),
  containerId: lineId,
  label: 'Halden Umber',
  stockForm: 'container',
  pieces: 0,
  ...given,
});
const said = (
  lineId: string,
  outcome: SaidOfLine['outcome'],
  microlitres: number | null = null,
): SaidOfLine => ({
  lineId,
  outcome,
  drops: null,
  microlitres,
});
const share = (containerId: string, microlitres: number, mixId = 'base') => ({
  mixId,
  containerId,
  lotId: 'lot',
  drops: 2,
  microlitres,
});
const recall = { kind: 'recall', reason: 'recall notice', on: 'lot' } as const;
const doubt = { kind: 'quarantine', reason: 'doubt', on: 'container' } as const;

describe('settling a tray', () => {
  it('takes pieces nothing was said of for used, and bottles in no mix for put back', () => {
    const settlement = settleTray([needle('n'), bottle('umber')], [], []);
    expect(settlement.uses).toEqual([
      expect.objectContaining({ lineId: 'n', pieces: 1, microlitres: 0, againstRefusal: [] }),
    ]);
    expect(settlement.lines).toEqual([
      { lineId: 'n', settledAs: 'used' },
      { lineId: 'umber', settledAs: 'back unopened' },
    ]);
    expect(settlement.wastes).toEqual([]);
  });

  // Opened sharps go to the sharps container, used or not (NEHA Body Art Model Code, §4 [P]).
  it('wastes a needle that was opened and touched nobody', () => {
    const settlement = settleTray([needle('n')], [], [said('n', 'opened unused')]);
    expect(settlement.uses).toEqual([]);
    expect(settlement.wastes).toEqual([
      { lineId: 'n', containerId: 'box of n', pieces: 1, microlitres: 0, reason: 'opened unused' },
    ]);
  });

  it('books nothing for a needle that goes back unopened', () => {
    const settlement = settleTray([needle('n')], [], [said('n', 'back unopened')]);
    expect([settlement.uses, settlement.wastes]).toEqual([[], []]);
  });

  it('books each share of each mix as a use of its bottle', () => {
    const settlement = settleTray([bottle('umber')], [share('umber', 150), share('umber', 50, 'shadow')], []);
    expect(settlement.uses.map((use) => [use.mixId, use.microlitres, use.pieces])).toEqual([
      ['base', 150, 0],
      ['shadow', 50, 0],
    ]);
  });

  it('books a volume used outside a mix besides the shares, and a use of unknown amount where none is said', () => {
    const both = settleTray([bottle('umber')], [share('umber', 150)], [said('umber', 'used', 40)]);
    expect(both.uses.map((use) => [use.mixId, use.microlitres])).toEqual([
      ['base', 150],
      [null, 40],
    ]);
    const unknown = settleTray([bottle('gel')], [], [said('gel', 'used')]);
    expect(unknown.uses).toEqual([expect.objectContaining({ mixId: null, microlitres: 0, pieces: 0 })]);
  });

  it('asks a word for each line that was put on hold meanwhile, and books nothing until it has one', () => {
    const settlement = settleTray([needle('n', { holds: [doubt] }), needle('m')], [], []);
    expect(settlement.faults).toEqual([expect.objectContaining({ lineId: 'n', code: 'decision needed' })]);
  });

  it('records the use of something on hold against the refusal, the recall first', () => {
    const settlement = settleTray([needle('n', { holds: [doubt, recall] })], [], [said('n', 'used')]);
    expect(settlement.faults).toEqual([]);
    expect(settlement.uses[0]?.againstRefusal).toEqual(['recalled', 'on hold']);
  });

  it('wastes the shares of a held bottle whose mix touched nobody', () => {
    const settlement = settleTray(
      [bottle('umber', { holds: [recall] })],
      [share('umber', 150)],
      [said('umber', 'opened unused')],
    );
    expect(settlement.uses).toEqual([]);
    expect(settlement.wastes).toEqual([
      expect.objectContaining({ microlitres: 150, reason: 'mixed but not used' }),
    ]);
  });

  it('does not believe that a bottle dropped into a mix goes back unopened', () => {
    const settlement = settleTray([bottle('umber')], [share('umber', 150)], [said('umber', 'back unopened')]);
    expect(settlement.faults).toEqual([expect.objectContaining({ code: 'back unopened but mixed' })]);
  });

  it('does not believe that a bottle that was used besides goes back unopened', () => {
    const line = bottle('umber', { usedBesides: true });
    const settlement = settleTray([line], [], [said('umber', 'back unopened')]);
    expect(settlement.faults).toEqual([expect.objectContaining({ code: 'back unopened but used besides' })]);
  });

  it('settles a bottle that was used besides as used, without booking it twice', () => {
    const line = bottle('umber', { usedBesides: true });
    const settlement = settleTray([line], [], []);
    expect(settlement.lines).toEqual([{ lineId: 'umber', settledAs: 'used' }]);
    expect([settlement.uses, settlement.wastes, settlement.faults]).toEqual([[], [], []]);
    const mixed = settleTray([line], [share('umber', 150)], []);
    expect(mixed.uses).toEqual([expect.objectContaining({ mixId: 'base', microlitres: 150 })]);
  });

  it('lets a piece go back when others of its box were used besides', () => {
    const settlement = settleTray([needle('n', { usedBesides: true })], [], [said('n', 'back unopened')]);
    expect(settlement.faults).toEqual([]);
    expect(settlement.lines).toEqual([{ lineId: 'n', settledAs: 'back unopened' }]);
  });

  it('wastes the amount of a bottle that was opened and touched nobody', () => {
    const settlement = settleTray([bottle('umber')], [], [said('umber', 'opened unused', 500)]);
    expect(settlement.uses).toEqual([]);
    expect(settlement.wastes).toEqual([
      expect.objectContaining({ microlitres: 500, reason: 'opened unused' }),
    ]);
  });

  it('drops no amount silently that does not fit what was said', () => {
    const back = settleTray([bottle('umber')], [], [said('umber', 'back unopened', 40)]);
    expect(back.faults).toEqual([expect.objectContaining({ code: 'back unopened but an amount was said' })]);
    const pieces = settleTray([needle('n')], [], [said('n', 'used', 40)]);
    expect(pieces.faults).toEqual([expect.objectContaining({ code: 'pieces have no volume' })]);
    expect([back.uses, back.wastes, pieces.uses]).toEqual([[], [], []]);
  });

  it('finds words about lines of another tray, and two words about one line', () => {
    const settlement = settleTray(
      [needle('n')],
      [],
      [said('n', 'used'), said('n', 'opened unused'), said('x', 'used')],
    );
    expect(settlement.faults.map((fault) => [fault.lineId, fault.code])).toEqual([
      ['n', 'said twice'],
      ['x', 'not on this tray'],
    ]);
  });
});
