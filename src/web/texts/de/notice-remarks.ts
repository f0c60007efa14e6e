import type { NoticeRemarkCode, RemarkFacts } from '../../../recalls/notice-reading/notice-reading.js';

type Said = Required<RemarkFacts>;

/** Was an einer Meldung anzusehen ist, nach dem Kürzel der Bemerkung. */
const sentences: Record<NoticeRemarkCode, (facts: Said) => string> = {
  'nothing read': () =>
    'In der Meldung wurde keine Charge gelesen; jede kann also gemeint sein. Lesen Sie sie und geben Sie ein, was sie nennt.',
  'text cut': ({ allowed, count }) =>
    `Der Text hat ${count} Zeichen; die ersten ${allowed} wurden gelesen. Was gemeint ist, bleibt offen. Geben Sie den Rest als eigene Meldung ein.`,
  'too many terms': ({ allowed, count }) =>
    `Die Meldung nennt ${count} Chargen über die ${allowed} hinaus, die aufgelistet werden. Was gemeint ist, bleibt offen. Geben Sie den Rest als eigene Meldung ein.`,
  'too many items': ({ allowed, count }) =>
    `Die Meldung nennt ${count} Produkte über die ${allowed} hinaus, die aufgelistet werden; ihre Chargen stehen beim letzten, und das bleibt offen.`,
  'look-alike letters': ({ seen, readAs }) =>
    `„${seen}“ enthält Buchstaben einer anderen Schrift, die wie lateinische aussehen. Gelesen wurde „${readAs}“. Vergleichen Sie mit dem Etikett.`,
  'invisible marks': ({ count }) =>
    `Der Text hat ${count} Zeichen, die man nicht sieht, etwa solche, die die Schreibrichtung ändern. Sie wurden weggelassen.`,
  'control characters': ({ count }) =>
    `Der Text hat ${count} Steuerzeichen. Sie wurden als Leerzeichen gelesen.`,
  'ambiguous date': ({ seen, otherReadings }) =>
    `„${seen}“ kann ${otherReadings.join(' oder ')} heißen. Alle Tage vom ersten bis zum letzten wurden genommen. Wählen Sie, was stimmt.`,
  'date order': ({ seen, readAs }) =>
    `Wegen „${seen}“ wurden Daten wie 03/04/15 so gelesen: ${dateOrder(readAs)} zuerst. Vergleichen Sie mit der Meldung.`,
  'date not read': ({ seen }) =>
    `In „${seen}“ wurde kein Datum gelesen. Geben Sie es ein, wenn es begrenzt, welche Chargen gemeint sind.`,
  'date without a word': ({ seen, readAs }) =>
    `„${seen}“ steht ohne ein Wort dafür neben einer Charge. Es wurde als deren Haltbarkeit gelesen: ${readAs}.`,
  'date without a year': ({ seen }) =>
    `„${seen}“ kann ein Monat mit Jahr sein oder ein Tag ohne Jahr. Gelesen wurde Monat und Jahr; wo nur dies sagt, welche Chargen gemeint sind, bleibt es offen.`,
  'dates turned': ({ seen, readAs }) => `„${seen}“ endet, bevor es beginnt. Gelesen wurde ${readAs}.`,
  'several expiries': ({ seen, readAs }) =>
    `Neben denselben Chargen stehen mehrere Haltbarkeiten („${seen}“). Alle Tage von der ersten bis zur letzten wurden genommen: ${readAs}.`,
  'code like a date': ({ seen }) =>
    `„${seen}“ sieht wie ein Datum aus, steht aber, wo Chargen stehen. Es wurde als Charge gelesen.`,
  'code with O or I': ({ seen, otherReadings }) =>
    `Die Charge „${seen}“ hat Buchstaben, die wie Ziffern aussehen. Sie könnte auch ${otherReadings.join(' oder ')} heißen.`,
  'code with spaces': ({ seen, otherReadings }) =>
    `„${seen}“ wurde als eine Charge mit Leerzeichen gelesen. Es könnten auch mehrere sein: ${otherReadings.join(', ')} wurden auch genommen. Nehmen Sie weg, was falsch ist.`,
  'codes parted by spaces': ({ seen, otherReadings }) =>
    `„${seen}“ wurde als mehrere Chargen gelesen, durch Leerzeichen getrennt: ${otherReadings.join(', ')}.`,
  'code of letters': ({ seen }) =>
    `„${seen}“ wurde als Charge gelesen, obwohl es keine Ziffer hat. Nehmen Sie es weg, wenn es ein Wort ist.`,
  'code too long': ({ seen, count, allowed }) =>
    `„${seen}“ steht, wo eine Charge steht, hat aber ${count} Zeichen; gelesen werden Chargen mit höchstens ${allowed}. Was gemeint ist, bleibt offen. Geben Sie die Charge von Hand ein.`,
  'code apart from its word': ({ seen }) =>
    `„${seen}“ steht entfernt von dem Wort für Chargen. Es wurde als Charge gelesen. Nehmen Sie es weg, wenn es etwas anderes ist.`,
  'codes without a word': ({ seen }) =>
    `Ein Wort für Chargen wurde nicht gefunden. „${seen}“ und was so aussieht, wurde als Chargen gelesen, und was gemeint ist, bleibt offen.`,
  'very wide range': ({ seen, count }) =>
    `Der Bereich „${seen}“ umfasst ${count} Chargen. Er bleibt ein Bereich und wird mit den aufgezeichneten Chargen verglichen. Prüfen Sie beide Enden.`,
  'range ends differ in length': ({ seen, otherReadings }) =>
    `Die Enden des Bereichs „${seen}“ sind verschieden lang.${orElse(otherReadings)} Beide Enden wurden auch als Chargen genommen. Prüfen Sie sie.`,
  'range ends differ in letters': ({ seen }) =>
    `Die Enden des Bereichs „${seen}“ unterscheiden sich in mehr als einer Zahl; was dazwischen liegt, kann niemand sagen. Beide Enden wurden auch als Chargen genommen. Prüfen Sie sie.`,
  'range turned': ({ seen, readAs }) =>
    `Der Bereich „${seen}“ endet, bevor er beginnt. Gelesen wurde ${readAs}. Prüfen Sie beide Enden.`,
  'range or code': ({ seen, readAs }) =>
    `„${seen}“ kann eine Charge sein oder der Bereich ${readAs}. Beides wurde genommen. Nehmen Sie weg, was falsch ist.`,
  exception: ({ seen }) =>
    `„${seen}“ scheint Chargen auszunehmen. Nichts wurde ausgenommen: Enger wird es nur durch Sie selbst. Nehmen Sie weg, was die Meldung ausnimmt.`,
  'open-ended': ({ seen }) =>
    `„${seen}“ sagt, dass weitere Chargen gemeint sein können. Was gemeint ist, bleibt offen.`,
  'number not a GTIN': ({ seen }) =>
    `„${seen}“ steht, wo eine GTIN steht, aber Länge oder Prüfziffer stimmt nicht. Es wurde weggelassen. Vergleichen Sie mit dem Etikett.`,
  'symbol not valid': ({ seen }) =>
    `Der Text „${seen}“ eines Strichcodes ist nicht gültig. Vergleichen Sie mit dem Etikett.`,
  'name by its place': ({ seen }) =>
    `„${seen}“ wurde wegen seiner Stelle als Name eines Produkts gelesen. Berichtigen Sie es, wenn es keiner ist.`,
  'numbering unclear': ({ seen }) =>
    `Die Nummern der Liste steigen nicht gleichmäßig („${seen}“); ihre Chargen stehen daher bei jedem nummerierten Produkt. Ordnen Sie sie von Hand.`,
  'names disagree': ({ seen, readAs }) =>
    `Die GTIN ${readAs} gehört im Verzeichnis zu einem anderen Produkt als der Name „${seen}“. Kein Produkt wurde gewählt. Wählen Sie das richtige.`,
  'manufactured beside codes': ({ seen, readAs }) =>
    `„${seen}“ (${readAs}) wurde als Herstellungstag der Chargen daneben gelesen und begrenzt nichts.`,
  'all lots limited': ({ seen }) =>
    `„${seen}“ wird durch ein Datum begrenzt, das folgt. Genommen wurden Chargen dieses Datums. Wählen Sie alle Chargen, wenn das Datum nichts begrenzt.`,
};

const nothing: Said = { seen: '', readAs: '', otherReadings: [], count: 0, allowed: 0 };

export const noticeRemarks: Record<string, ((facts: RemarkFacts) => string) | undefined> = Object.fromEntries(
  Object.entries(sentences).map(([code, say]) => [
    code,
    (facts: RemarkFacts) => say({ ...nothing, ...facts }),
  ]),
);

function orElse(readings: readonly string[]): string {
  return readings.length === 0
    ? ''
    : ` Es könnte auch ${readings.join(' oder ')} heißen; das wurde mitgenommen.`;
}

/** @param readAs what the service says: which of day and month is first */
function dateOrder(readAs: string): string {
  return readAs.startsWith('day') ? 'der Tag' : 'der Monat';
}
