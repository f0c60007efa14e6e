/** The class of a recall, and the sentences of danger and of what to do, where no label says so. */

export interface FoundSentence {
  start: number;
  end: number;
}

const danger =
  /\b(?:risks?|hazards?|dangerous|contaminat\w*|non-?sterile|not sterile|sterility|bacteri\w*|microb\w*|infections?|allergic|mould|mold|pathogen\w*|injur\w*|adverse|gefahr\w*|risik\w*|verunreinig\w*|keim\w*|infektion\w*|risques?|contamin\w*|riesgos?|peligro\w*)\b/i;
const action =
  /\b(?:stop using|do not use|discontinue|quarantine|return (?:it|them|the|all|any|affected|product|to)|destroy|discard|dispose|set aside|remove from|refund|nicht (?:mehr )?verwenden|vernichten|zur(?:ü|u)cksenden|entsorgen|ne plus utiliser|ne pas utiliser|retourner|détruire|no utilizar|no usar|devolver|desechar)\b/i;
const recallClass = /\b(?:class|klasse|classe|clase) {0,2}(?:I{1,3}|[123])\b/i;
const mostSentences = 3;
const longestSentence = 1_000;

/** At most three sentences that speak of danger, and three that say what to do. */
export function sentencesOf(text: string): { risk: FoundSentence[]; remedy: FoundSentence[] } {
  const risk: FoundSentence[] = [];
  const remedy: FoundSentence[] = [];
  for (const sentence of sentences(text)) {
    const words = text.slice(sentence.start, sentence.end);
    if (risk.length < mostSentences && danger.test(words)) risk.push(sentence);
    if (remedy.length < mostSentences && action.test(words)) remedy.push(sentence);
    if (risk.length === mostSentences && remedy.length === mostSentences) break;
  }
  return { risk, remedy };
}

export function classIn(text: string): FoundSentence | null {
  const match = recallClass.exec(text);
  return match === null ? null : { start: match.index, end: match.index + match[0].length };
}

function* sentences(text: string): Generator<FoundSentence> {
  let start = 0;
  for (let place = 0; place <= text.length; place++) {
    const character = text.charAt(place);
    const ends =
      place === text.length ||
      character === '\n' ||
      (/[.!?]/.test(character) && /^(?:\s|$)/.test(text.charAt(place + 1)));
    if (!ends) continue;
    const end = character === '\n' || place === text.length ? place : place + 1;
    const words = text.slice(start, end);
    const from = start + words.length - words.trimStart().length;
    const to = start + words.trimEnd().length;
    if (to > from && to - from <= longestSentence) yield { start: from, end: to };
    start = place + 1;
  }
}
