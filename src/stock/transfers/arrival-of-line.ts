import { type LineBalance, lineState, minus, nothing, partOf, type Quantity } from './transfer-balance.js';

/** What the receiver says of a line. */
export interface LineAtArrival {
  /** That are here, damaged ones too. */
  pieces: number;
  /** Whether they were recorded as lost before. */
  turnedUp: boolean;
}

export type ArrivalOfLine =
  | { refusal: string }
  | {
      /** Of what was sent. */
      arrived: Quantity;
      /** Missing of what was sent; negative for what turned up. */
      lost: Quantity;
      /** Beyond what was sent. */
      surplusPieces: number;
    };

/**
 * What an arrival makes of a line. The first ends it: what is missing is lost, what is too much is surplus; afterwards
 * only what was lost may turn up. Refused is only what contradicts the record, with what to do about it.
 */
export function arrivalOfLine(balance: LineBalance, { pieces, turnedUp }: LineAtArrival): ArrivalOfLine {
  if (turnedUp) return turningUp(balance, pieces);
  const state = lineState(balance);
  if (state === 'withdrawn') {
    return {
      refusal:
        'The sending studio has called this back, so it stands on its shelf by the book. If it is here after all, ask them to send it again in the record; then record its arrival.',
    };
  }
  if (state !== 'in transit') {
    const { arrived, sent, lost } = balance;
    const more =
      lost.pieces > 0
        ? 'If some of those have turned up, say turnedUp.'
        : 'If more or fewer are here, count the box.';
    return {
      refusal: `What became of this is recorded already: ${arrived.pieces} of ${sent.pieces} pieces arrived, ${lost.pieces} were lost. ${more}`,
    };
  }
  const arrived = partOf(balance.sent, pieces);
  return { arrived, lost: minus(balance.sent, arrived), surplusPieces: pieces - arrived.pieces };
}

function turningUp({ lost }: LineBalance, pieces: number): ArrivalOfLine {
  if (lost.pieces === 0) {
    return { refusal: 'Nothing of this is recorded as lost, so nothing can turn up. Leave turnedUp out.' };
  }
  if (pieces < 1 || pieces > lost.pieces) {
    return {
      refusal: `${pieces} pieces are said to have turned up, but ${lost.pieces} are recorded as lost. Give 1 to ${lost.pieces}.`,
    };
  }
  const arrived = partOf(lost, pieces);
  return { arrived, lost: minus(nothing, arrived), surplusPieces: 0 };
}

/**
 * How what was sent and arrived comes into the containers it stands in: the last are filled first, since the faulty come
 * last, so that what is beyond it counts as sound.
 *
 * @param containers pieces of each, together those that are here
 */
export function intoContainers(
  arrived: Quantity,
  containers: readonly { pieces: number }[],
): { came: Quantity; surplusPieces: number }[] {
  let rest = arrived;
  return containers
    .toReversed()
    .map(({ pieces }) => {
      const came = rest.pieces === 0 ? nothing : partOf(rest, pieces);
      rest = minus(rest, came);
      return { came, surplusPieces: pieces - came.pieces };
    })
    .toReversed();
}
