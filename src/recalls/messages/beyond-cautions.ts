import { sentencesOf } from './softening-words.js';

/**
 * Advice on health that a message never gives, also when a notice does: the trade notes allow "stop, watch for these signs,
 * see a doctor, and show them this", and nothing more. The patterns are ours.
 */
const treatment =
  '(?:antibiotic|antihistamin|anti-?inflammator|(?:hydro)?cortison|corticosteroid|steroid|ointment|cream\\b|lotion|painkiller|pain relief|ibuprofen|paracetamol|acetaminophen|aspirin|medication|medicine|tablet|disinfectant|antiseptic|vaccin|cold compress|ice pack|Antibioti|Antihistamin|Cortison|Kortison|Salbe|Creme|Schmerzmittel|Medikament|Tablette|Desinfektion|Impfung|Kühlpack)';
const advice = [
  // "Use of a cream may burn" is a hazard, "use a cream" is advice.
  new RegExp(
    `(?:^|[,;:] |\\b(?:should|must|please|and|then|or|advised to|recommended to|need to) )(?:take|apply|use(?! of)|put on|administer|swallow|start|treat)\\b[^.!?]*${treatment}`,
    'iu',
  ),
  new RegExp(
    `${treatment}\\p{L}*[^.!?]*(?:einnehmen|auftragen|nehmen Sie|tragen Sie|verwenden Sie|behandeln)`,
    'iu',
  ),
  new RegExp(`(?:nehmen|tragen|verwenden|behandeln|benutzen) Sie[^.!?]*${treatment}`, 'iu'),
  /\b(?:rinse|wash|cool|disinfect|massage|squeeze|peel)\b (?:it|the|your|any|with)\b/iu,
  /(?<!\p{L})(?:spülen|waschen|kühlen|desinfizieren|massieren) Sie(?!\p{L})/iu,
  /\b(?:laser|surgical(?:ly)?|saline) (?:removal|remove|treatment)\b/iu,
  /(?<!\p{L})Laser(?:entfernung|behandlung)(?!\p{L})/iu,
  /\b(?:harmless|nothing to worry about|do not worry|don.t worry|no need to (?:see|consult|worry|act)|no cause for (?:concern|alarm)|wait and see)\b/iu,
  /(?<!\p{L})(?:harmlos|unbedenklich|kein (?:Grund|Anlass) zur (?:Sorge|Beunruhigung)|keine Sorge|abwarten|nicht nötig,? (?:einen Arzt|zum Arzt))(?!\p{L})/iu,
  /\b\d+(?:[.,]\d+)? ?(?:mg|milligrams?|Milligramm)\b[^.!?]*\b(?:daily|a day|per day|times|täglich|am Tag)\b/iu,
] as const;

export interface Cautious {
  /** Empty when it was nothing but advice. */
  text: string;
  /** The sentences that were left out. */
  leftOut: string[];
}

/** A text of a notice without the sentences that give advice on health, or reassure. */
export function withoutAdvice(text: string): Cautious {
  const leftOut: string[] = [];
  const kept = sentencesOf(text).filter((sentence) => {
    if (!advice.some((pattern) => pattern.test(sentence))) return true;
    leftOut.push(sentence);
    return false;
  });
  return { text: kept.join(' '), leftOut };
}
