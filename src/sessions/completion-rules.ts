import type { MixTotal } from './mix-totals.js';
import type { HoldFact } from './tray-thing.js';

export const outcomes = ['used', 'opened unused', 'back unopened'] as const;
/** What became of something on the tray. */
export type Outcome = (typeof outcomes)[number];

/** A line on the tray as completion finds it. */
export interface LineToSettle {
  lineId: string;
  containerId: string;
  label: string;
  stockForm: 'container' | 'pieces';
  pieces: number;
  /** Whether a use of this container is told besides, apart from the lines. */
  usedBesides: boolean;
  /** Open holds now: one may have arrived since the line was admitted. */
  holds: readonly HoldFact[];
}

/** What the artist said of a line; a quantity only for a container that was used outside a mix. */
export interface SaidOfLine {
  lineId: string;
  outcome: Outcome;
  drops: number | null;
  microlitres: number | null;
}

export interface SettledUse {
  lineId: string;
  containerId: string;
  mixId: string | null;
  pieces: number;
  drops: number | null;
  microlitres: number;
  againstRefusal: ('recalled' | 'on hold')[];
}

export interface SettledWaste {
  lineId: string;
  containerId: string;
  pieces: number;
  microlitres: number;
  reason: 'opened unused' | 'mixed but not used';
}

export interface CompletionFault {
  lineId: string;
  code:
    | 'decision needed'
    | 'back unopened but mixed'
    | 'back unopened but used besides'
    | 'back unopened but an amount was said'
    | 'pieces have no volume'
    | 'said twice'
    | 'not on this tray';
  message: string;
}

export interface Settlement {
  lines: { lineId: string; settledAs: Outcome }[];
  uses: SettledUse[];
  wastes: SettledWaste[];
  /** When there is any, nothing may be booked. */
  faults: CompletionFault[];
}

/**
 * Settles a tray when its session is completed. A piece nothing was said of was used; a container nothing was said of was
 * used when it is in a mix or was used besides, else it goes back. What is told besides is booked by itself, never a
 * second time by its line. Dates are not judged again. What is on hold by now needs a word for each:
 * it was used, which is recorded against the refusal, or it was not.
 */
export function settleTray(
  lines: readonly LineToSettle[],
  mixes: readonly MixTotal[],
  said: readonly SaidOfLine[],
): Settlement {
  const settlement: Settlement = { lines: [], uses: [], wastes: [], faults: faultsOfWords(lines, said) };
  const byLine = new Map(said.map((word) => [word.lineId, word]));
  for (const line of lines) {
    const word = byLine.get(line.lineId);
    const shares = mixes.filter((mix) => mix.containerId === line.containerId);
    if (line.holds.length > 0 && word === undefined) {
      settlement.faults.push({
        lineId: line.lineId,
        code: 'decision needed',
        message: `${line.label} was put on hold after it was laid out. Say whether it was used or not.`,
      });
      continue;
    }
    // Other pieces of a box may have been used besides; a bottle is one thing.
    const usedBesides = line.stockForm === 'container' && line.usedBesides;
    const settledAs =
      word?.outcome ??
      (line.stockForm === 'pieces' || shares.length > 0 || usedBesides ? 'used' : 'back unopened');
    if (settledAs === 'back unopened' && shares.length > 0) {
      settlement.faults.push({
        lineId: line.lineId,
        code: 'back unopened but mixed',
        message: `${line.label} was dropped into a mix, so it cannot go back unopened. Say "used", or "opened unused" when the mix touched nobody.`,
      });
      continue;
    }
    if (settledAs === 'back unopened' && usedBesides) {
      settlement.faults.push({
        lineId: line.lineId,
        code: 'back unopened but used besides',
        message: `${line.label} is told to have been used besides, so it did not go back unopened. Say "used" of its line, with the amount, or take it out of what was used besides.`,
      });
      continue;
    }
    const amount = faultOfAmount(line, settledAs, word);
    if (amount) {
      settlement.faults.push(amount);
      continue;
    }
    settlement.lines.push({ lineId: line.lineId, settledAs });
    if (line.stockForm === 'pieces') settlePieces(settlement, line, settledAs);
    else settleContainer(settlement, line, settledAs, shares, word);
  }
  return settlement;
}

function settlePieces(settlement: Settlement, line: LineToSettle, settledAs: Outcome): void {
  const { lineId, containerId, pieces } = line;
  if (settledAs === 'used') {
    const againstRefusal = refusalsOf(line);
    settlement.uses.push({
      lineId,
      containerId,
      mixId: null,
      pieces,
      drops: null,
      microlitres: 0,
      againstRefusal,
    });
  }
  if (settledAs === 'opened unused') {
    settlement.wastes.push({ lineId, containerId, pieces, microlitres: 0, reason: 'opened unused' });
  }
}

function settleContainer(
  settlement: Settlement,
  line: LineToSettle,
  settledAs: Outcome,
  shares: readonly MixTotal[],
  word: SaidOfLine | undefined,
): void {
  const { lineId, containerId } = line;
  const againstRefusal = refusalsOf(line);
  for (const share of shares) {
    if (settledAs === 'used') {
      const { mixId, drops, microlitres } = share;
      settlement.uses.push({ lineId, containerId, mixId, pieces: 0, drops, microlitres, againstRefusal });
    } else {
      const { microlitres } = share;
      settlement.wastes.push({ lineId, containerId, pieces: 0, microlitres, reason: 'mixed but not used' });
    }
  }
  const microlitres = word?.microlitres ?? 0;
  const drops = word?.drops ?? null;
  const bookedBesides = word === undefined && line.usedBesides;
  if (settledAs === 'used' && !bookedBesides && (shares.length === 0 || microlitres > 0)) {
    settlement.uses.push({ lineId, containerId, mixId: null, pieces: 0, drops, microlitres, againstRefusal });
  }
  // Without a volume nothing is booked, but that it was opened is said all the same.
  if (settledAs === 'opened unused' && (shares.length === 0 || microlitres > 0)) {
    settlement.wastes.push({ lineId, containerId, pieces: 0, microlitres, reason: 'opened unused' });
  }
}

/** An amount that cannot belong to what was said: nothing said is dropped silently. */
function faultOfAmount(
  line: LineToSettle,
  settledAs: Outcome,
  word: SaidOfLine | undefined,
): CompletionFault | undefined {
  const { lineId, label } = line;
  if ((word?.microlitres ?? null) === null && (word?.drops ?? null) === null) return undefined;
  if (line.stockForm === 'pieces') {
    const message = `${label} is counted in pieces; leave drops and microlitres out.`;
    return { lineId, code: 'pieces have no volume', message };
  }
  if (settledAs !== 'back unopened') return undefined;
  const message = `An amount of ${label} was said, so it did not go back unopened. Say "used", or "opened unused" when it touched nobody.`;
  return { lineId, code: 'back unopened but an amount was said', message };
}

/** The refusals a use is recorded against; dates were judged when the line was admitted. */
function refusalsOf(line: LineToSettle): SettledUse['againstRefusal'] {
  const recalled = line.holds.some((hold) => hold.kind === 'recall');
  const held = line.holds.some((hold) => hold.kind !== 'recall');
  return [...(recalled ? (['recalled'] as const) : []), ...(held ? (['on hold'] as const) : [])];
}

function faultsOfWords(lines: readonly LineToSettle[], said: readonly SaidOfLine[]): CompletionFault[] {
  const known = new Set(lines.map((line) => line.lineId));
  const seen = new Set<string>();
  return said.flatMap((word): CompletionFault[] => {
    if (!known.has(word.lineId)) {
      const message = 'This line does not lie on the tray of this session (any more).';
      return [{ lineId: word.lineId, code: 'not on this tray', message }];
    }
    if (seen.has(word.lineId)) {
      const message = 'Two outcomes were said of this line; say one.';
      return [{ lineId: word.lineId, code: 'said twice', message }];
    }
    seen.add(word.lineId);
    return [];
  });
}
