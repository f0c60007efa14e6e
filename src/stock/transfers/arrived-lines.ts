import { type PieceFault, type PlannedContainer, plannedContainers } from '../planned-containers.js';
import { type ArrivalOfLine, arrivalOfLine } from './arrival-of-line.js';
import type { LineBalance } from './transfer-balance.js';

/** A line of a transfer, as far as it decides what may be said of its arrival. */
export interface SentLine {
  id: string;
  form: 'bottle' | 'box';
  balance: LineBalance;
}

/** What the receiver says of it. */
export interface SaidOfArrival {
  lineId: string;
  pieces: number;
  faults?: readonly { kind: PieceFault; pieces: number }[];
  placeId?: string;
  turnedUp?: boolean;
}

export interface ArrivedLine<Line, Said> {
  /** In what was said, from 1. */
  lineNumber: number;
  sent: Line;
  said: Said;
  became: Exclude<ArrivalOfLine, { refusal: string }>;
  /** What it stands in here, sound first; none when nothing came. */
  containers: PlannedContainer[];
}

export interface ArrivalFault {
  field: string;
  code: 'invalid-fields' | 'unusable-quantity';
  message: string;
}

export interface UnderstoodArrival<Line, Said> {
  arrived: ArrivedLine<Line, Said>[];
  /** Ids of lines that the transfer does not have. */
  unknownLineIds: string[];
  faults: ArrivalFault[];
  /** What contradicts the record. */
  refusals: { lineNumber: number; lineId: string; message: string }[];
}

/** Understands what is said of an arrival; nothing is to be recorded unless all of it is understood. */
export function understandArrival<Line extends SentLine, Said extends SaidOfArrival>(
  lines: readonly Line[],
  said: readonly Said[],
): UnderstoodArrival<Line, Said> {
  const understood: UnderstoodArrival<Line, Said> = {
    arrived: [],
    unknownLineIds: [],
    faults: [],
    refusals: [],
  };
  for (const [index, one] of said.entries()) {
    const fault = (field: string, code: ArrivalFault['code'], message: string) =>
      understood.faults.push({ field: `lines.${index}.${field}`, code, message });
    const { lineId, pieces, faults = [], placeId, turnedUp = false } = one;
    const sent = lines.find(({ id }) => id === lineId);
    if (sent === undefined) {
      understood.unknownLineIds.push(lineId);
      continue;
    }
    if (said.findIndex((other) => other.lineId === lineId) < index) {
      fault('lineId', 'invalid-fields', 'this line is named twice; name each once, with all that came of it');
    }
    if (sent.form === 'bottle' && pieces > 1) {
      fault(
        'pieces',
        'unusable-quantity',
        'a bottle is one piece; give 1 when it is here, 0 when it is missing',
      );
      continue;
    }
    if (pieces > 0 && placeId === undefined) {
      fault('placeId', 'invalid-fields', 'name the place where it stands from now on');
    }
    const planned = plannedContainers(sent.form === 'box' ? 'pieces' : 'container', pieces, 1, faults);
    if ('faultyPieces' in planned) {
      const more = `${planned.faultyPieces} pieces are named as faulty, but ${pieces} came`;
      fault('faults', 'unusable-quantity', `${more}; a piece with two faults is named under one`);
      continue;
    }
    const became = arrivalOfLine(sent.balance, { pieces, turnedUp });
    if ('refusal' in became) {
      understood.refusals.push({ lineNumber: index + 1, lineId, message: became.refusal });
      continue;
    }
    const { containers } = planned;
    understood.arrived.push({ lineNumber: index + 1, sent, said: one, became, containers });
  }
  return understood;
}
