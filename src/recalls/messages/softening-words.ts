/**
 * What a recall notice may not say of its hazard, since it makes it look smaller. [P] Regulation (EU) 2023/988, Art.
 * 36(2)(c), names "voluntary", "precautionary", "discretionary", "in rare situations", "in specific situations" and hints
 * that no accidents were reported; the turns of phrase that mean the same are ours.
 */
const phrases = [
  /\bvoluntar(?:y|ily)\b/giu,
  /\bprecautionary\b/giu,
  /\b(?:purely |just |only )?as a (?:pure |mere )?precaution\b/giu,
  /\bout of an abundance of caution\b/giu,
  /\bdiscretionary\b/giu,
  /\bat (?:its|their|our|your) (?:own |sole )?discretion\b/giu,
  /\bin (?:very |extremely |some |a few )?(?:rare|isolated|exceptional|specific|particular|certain) (?:situations|cases|circumstances|instances)\b/giu,
  /(?<!\p{L})(?:rein )?freiwillig(?:e[rsnm]?)?(?!\p{L})/giu,
  /(?<!\p{L})(?:rein )?vorsorglich(?:e[rsnm]?)?(?!\p{L})/giu,
  /(?<!\p{L})vorsichtshalber(?!\p{L})/giu,
  /(?<!\p{L})aus (?:reiner )?Vorsicht(?!\p{L})/giu,
  /(?<!\p{L})(?:im|nach) (?:eigenem |freiem )?Ermessen(?!\p{L})/giu,
  /(?<!\p{L})in (?:sehr |äußerst |einigen |wenigen )?(?:seltenen|einzelnen|spezifischen|bestimmten|besonderen) (?:Situationen|Fällen|Umständen)(?!\p{L})/giu,
  /(?<!\p{L})in Einzelfällen(?!\p{L})/giu,
] as const;

/** Clauses that say nothing happened yet are left out whole, and what a sentence says besides is kept. */
const nothingHappened = [
  /\b(?:no|not any|without any) (?:\p{L}+ ){0,3}(?:accidents?|injur(?:y|ies)|incidents?|illness(?:es)?|reactions?|complaints?|adverse events?)\b[^.!?]*\b(?:reported|known|received|occurred)\b/iu,
  /\b(?:keine|keinerlei) (?:\p{L}+ ){0,3}(?:Unfälle|Verletzungen|Vorfälle|Erkrankungen|Reaktionen|Beschwerden)(?!\p{L})[^.!?]*(?:gemeldet|bekannt|aufgetreten)/iu,
] as const;

/** The softening words in a text, as they stand there. */
export function softeningWords(text: string): string[] {
  return [...phrases, ...nothingHappened].flatMap((phrase) => text.match(phrase)?.slice() ?? []);
}

/** A text without its softening words. */
export interface Unsoftened {
  /** Empty when nothing else was in it. */
  text: string;
  /** What was left out, as it stood there. */
  leftOut: string[];
}

/** @param text of a notice, in one line */
export function unsoftened(text: string): Unsoftened {
  const leftOut: string[] = [];
  const kept = sentencesOf(text).flatMap((whole) => {
    const sentence = withoutNothingHappened(whole, leftOut);
    if (sentence === '') return [];
    const hard = phrases.reduce(
      (hardened, phrase) =>
        hardened.replace(phrase, (found) => {
          leftOut.push(found);
          return '';
        }),
      sentence,
    );
    return hard === sentence ? [sentence] : tidied(hard);
  });
  return { text: kept.join(' '), leftOut };
}

/** Where a sentence turns to something else. */
const turns = /[,;:]?\s+(?:but|however|yet|although|though|aber|jedoch|doch|allerdings)(?!\p{L}),?\s+|;\s+/iu;

function withoutNothingHappened(sentence: string, leftOut: string[]): string {
  const saysSo = (text: string) => nothingHappened.some((pattern) => pattern.test(text));
  if (!saysSo(sentence)) return sentence;
  const clauses = sentence.split(turns);
  const kept = clauses.filter((clause) => !saysSo(clause));
  if (kept.length === clauses.length) {
    leftOut.push(sentence);
    return '';
  }
  leftOut.push(...clauses.filter(saysSo));
  return tidied(kept.join('; ')).join('');
}

/** The sentences of a text in one line. A dot within a number or before a small letter ends none. */
export function sentencesOf(text: string): string[] {
  return text
    .replace(/\s+/gu, ' ')
    .trim()
    .split(/(?<=[.!?]) (?=[\p{Lu}\p{N}"„“(])/u)
    .filter((sentence) => sentence !== '');
}

function tidied(sentence: string): string[] {
  const text = sentence
    .replace(/\s+/gu, ' ')
    .replace(/\s+([,.;:!?])/gu, '$1')
    .replace(/([,;:])(?:\s*[,;:])+/gu, '$1')
    .replace(/^[\s,;:–-]+/u, '')
    .trim();
  if (!/[\p{L}\p{N}]/u.test(text)) return [];
  return [text.charAt(0).toUpperCase() + text.slice(1)];
}
