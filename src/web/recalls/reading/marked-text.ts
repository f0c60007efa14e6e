import type { TextSpan } from '../../../recalls/notice-reading/folded-text.js';

/** A stretch of a text as it is shown: plain, left out because nothing was read in it, or marked. */
export type Piece =
  | { kind: 'plain'; start: number; text: string }
  | { kind: 'left out'; start: number; characters: number }
  | { kind: 'marked'; start: number; text: string; mark: number; isFirst: boolean };

/** So much of a stretch without marks is shown beside each mark. */
const shownBesideMarks = 240;
/** A shorter stretch is not worth a button. */
const leastLeftOut = 600;

/**
 * Cuts a text into pieces that can be shown one after the other. Where marks lie over each other, the shortest shows, for
 * it says most. Linear but for sorting, so that a megabyte with thousands of marks stays quick.
 *
 * @param spans of the marks, in any order; those outside of the text are cut to it
 * @param opened starts of the stretches that were left out and are to be shown
 */
export function piecesOf(text: string, spans: readonly TextSpan[], opened: ReadonlySet<number>): Piece[] {
  const pieces: Piece[] = [];
  const seen = new Set<number>();
  for (const { start, end, mark } of stretchesOf(text.length, spans)) {
    if (mark !== undefined) {
      pieces.push({ kind: 'marked', start, text: text.slice(start, end), mark, isFirst: !seen.has(mark) });
      seen.add(mark);
    } else if (end - start < leastLeftOut || opened.has(start)) {
      pieces.push({ kind: 'plain', start, text: text.slice(start, end) });
    } else {
      // The first stretch is read from its beginning, the last to its end.
      const from = betweenCharacters(text, start + shownBesideMarks);
      const through = betweenCharacters(text, end - shownBesideMarks);
      pieces.push({ kind: 'plain', start, text: text.slice(start, from) });
      pieces.push({ kind: 'left out', start, characters: through - from });
      pieces.push({ kind: 'plain', start: through, text: text.slice(through, end) });
    }
  }
  return pieces;
}

interface Stretch extends TextSpan {
  mark: number | undefined;
}

/** From one beginning or end of a mark to the next, each with the shortest mark that lies over it. */
function stretchesOf(length: number, spans: readonly TextSpan[]): Stretch[] {
  const cut = spans.map(({ start, end }, mark) => ({
    start: Math.max(0, start),
    end: Math.min(length, end),
    mark,
  }));
  const byStart = cut.filter(({ start, end }) => end > start).sort((a, b) => a.start - b.start);
  const edges = [...new Set([0, length, ...byStart.flatMap(({ start, end }) => [start, end])])].sort(
    (a, b) => a - b,
  );
  const stretches: Stretch[] = [];
  let over: typeof byStart = [];
  let next = 0;
  for (const [index, start] of edges.entries()) {
    const end = edges[index + 1];
    if (end === undefined) break;
    over = over.filter((span) => span.end > start);
    for (let span = byStart[next]; span && span.start <= start; span = byStart[next]) {
      over.push(span);
      next += 1;
    }
    const mark = over.reduce<(typeof byStart)[number] | undefined>(
      (shortest, span) =>
        shortest === undefined || span.end - span.start < shortest.end - shortest.start ? span : shortest,
      undefined,
    )?.mark;
    const last = stretches.at(-1);
    if (last && last.mark === mark) last.end = end;
    else stretches.push({ start, end, mark });
  }
  return stretches;
}

/** The place, or the next one when it is in the middle of a character. */
function betweenCharacters(text: string, place: number): number {
  const code = text.charCodeAt(place);
  return code >= 0xdc00 && code <= 0xdfff ? place + 1 : place;
}
