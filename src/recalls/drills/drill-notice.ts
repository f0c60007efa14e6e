/** What a drill is about: a lot, chosen or drawn. */
export interface DrillNotice {
  lotId: string;
  /** The lot in words: product and code. */
  lot: string;
  /** Null: somebody chose the lot. */
  draw: { seed: string; lots: number; years: number } | null;
}

/** The text that stands in the place of a notice. It says how the lot was drawn, so that anybody can draw it again. */
export function drillNoticeText({ lotId, lot, draw }: DrillNotice): string {
  const how =
    draw === null
      ? 'The lot was chosen.'
      : `The lot was drawn with the seed ${draw.seed} from ${draw.lots} lots that were used in the last ${draw.years} years (32-bit FNV-1a of the seed, modulo the lots in the order of their ids).`;
  return `Drill: a rehearsal, not a recall. Nothing is held and nobody is told.\nLot: ${lot}\nLot id: ${lotId}\n${how}`;
}

/** What the text of a drill says; null for a text that was written by somebody else. */
export function readDrillNotice(text: string): DrillNotice | null {
  const read =
    /^Drill: a rehearsal.*\nLot: (.*)\nLot id: ([0-9a-f-]{36})\n(?:The lot was chosen\.|The lot was drawn with the seed (\S+) from (\d+) lots that were used in the last (\d+) years )/.exec(
      text,
    );
  if (!read) return null;
  const [, lot = '', lotId = '', seed, lots, years] = read;
  return {
    lotId,
    lot,
    draw: seed === undefined ? null : { seed, lots: Number(lots), years: Number(years) },
  };
}
