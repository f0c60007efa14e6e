/** One line as it was ordered. */
export interface OrderedLine {
  id: string;
  productId: string;
  packs: number;
  packContainers: number;
  /** 1 for a bottle. */
  containerPieces: number;
}

/** One line of a delivery that has to do with the order. */
export interface ArrivedLine {
  deliveryId: string;
  deliveryLineId: string;
  /** The line of the order it answers; null: none, it came beside them. */
  orderLineId: string | null;
  productId: string;
  pieces: number;
}

/** One line of a delivery that is about to be recorded. */
export interface ArrivingLine {
  productId: string;
  pieces: number;
  /** The line of the order that it is said to answer: undefined, nothing was said; null, that it answers none. */
  named: string | null | undefined;
}

/** What became of one line. In pieces: bottles, or cartridges. */
export interface LineReceipt {
  orderLineId: string;
  orderedPieces: number;
  /** Of the product that was ordered, all of it. */
  receivedPieces: number;
  outstandingPieces: number;
  surplusPieces: number;
}

/** What came otherwise than it was ordered. */
export interface ReceiptDifference {
  kind: 'more than ordered' | 'another product' | 'not ordered';
  orderLineId: string | null;
  deliveryId: string;
  deliveryLineId: string;
  productId: string;
  pieces: number;
}

export interface OrderReceipt {
  lines: LineReceipt[];
  differences: ReceiptDifference[];
  /** Of all lines, each counted up to what was ordered. */
  receivedPieces: number;
  outstandingPieces: number;
}

export function orderedPieces({ packs, packContainers, containerPieces }: OrderedLine): number {
  return packs * packContainers * containerPieces;
}

/**
 * What came of an order. Nothing that arrived is left out: what is another product than was ordered, more than was ordered,
 * or answers no line is a difference and counts towards no line.
 *
 * @param arrived in the order in which it came
 */
export function orderReceipt(lines: readonly OrderedLine[], arrived: readonly ArrivedLine[]): OrderReceipt {
  const differences: ReceiptDifference[] = [];
  const ordered = new Map(lines.map((line) => [line.id, line]));
  const received = new Map<string, number>();
  for (const { orderLineId, ...goods } of arrived) {
    const line = orderLineId === null ? undefined : ordered.get(orderLineId);
    if (!line) {
      differences.push({ kind: 'not ordered', orderLineId: null, ...goods });
      continue;
    }
    if (line.productId !== goods.productId) {
      differences.push({ kind: 'another product', orderLineId, ...goods });
      continue;
    }
    const before = received.get(line.id) ?? 0;
    const after = before + goods.pieces;
    const wanted = orderedPieces(line);
    const surplus = Math.max(0, after - Math.max(wanted, before));
    if (surplus > 0) differences.push({ kind: 'more than ordered', orderLineId, ...goods, pieces: surplus });
    received.set(line.id, after);
  }
  const receipts = lines.map((line): LineReceipt => {
    const wanted = orderedPieces(line);
    const receivedPieces = received.get(line.id) ?? 0;
    return {
      orderLineId: line.id,
      orderedPieces: wanted,
      receivedPieces,
      outstandingPieces: Math.max(0, wanted - receivedPieces),
      surplusPieces: Math.max(0, receivedPieces - wanted),
    };
  });
  return {
    lines: receipts,
    differences,
    receivedPieces: sum(receipts.map((one) => one.receivedPieces - one.surplusPieces)),
    outstandingPieces: sum(receipts.map((one) => one.outstandingPieces)),
  };
}

/**
 * Which lines of an order the lines of a delivery answer, where nobody said so: the first of the same product that still
 * waits, else the first of that product. What is no product of the order came beside it and answers none; when nothing that
 * came is of the order, all of it came in the place of the first line that waits.
 */
export function answeredLines(
  lines: readonly OrderedLine[],
  receipts: readonly LineReceipt[],
  arriving: readonly ArrivingLine[],
): (string | null)[] {
  const outstanding = new Map(receipts.map((one) => [one.orderLineId, one.outstandingPieces]));
  const take = (lineId: string, pieces: number) => outstanding.set(lineId, left(lineId) - pieces);
  const left = (lineId: string) => outstanding.get(lineId) ?? 0;
  for (const { named, pieces } of arriving) if (named != null && outstanding.has(named)) take(named, pieces);
  const answered = arriving.map(({ productId, pieces, named }) => {
    if (named !== undefined) return named;
    const candidates = lines.filter((line) => line.productId === productId);
    const meant = candidates.find(({ id }) => left(id) > 0) ?? candidates[0];
    if (!meant) return null;
    take(meant.id, pieces);
    return meant.id;
  });
  if (answered.some((lineId) => lineId !== null)) return answered;
  const instead = (lines.find(({ id }) => left(id) > 0) ?? lines[0])?.id ?? null;
  return arriving.map(({ named }) => (named === undefined ? instead : named));
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}
