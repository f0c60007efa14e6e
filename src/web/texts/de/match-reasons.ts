import type { MatchFacts, MatchReasonCode } from '../../../stock/lot-matching/match-reasons.js';

/** Warum eine Charge gemeint ist oder gemeint sein kann, nach dem Kürzel des Grundes; womit keine gezeigt wird, fehlt. */
export const matchReasons: Record<
  Exclude<MatchReasonCode, 'other shade' | 'other product' | 'lot not named'>,
  (facts: MatchFacts) => string
> = {
  'product chosen': () => 'Es ist ein Produkt, das im Verzeichnis gewählt wurde.',
  'gtin equal': ({ recorded }) => `Die Meldung nennt die GTIN ${recorded}.`,
  'names equal': ({ recorded }) => `Die Meldung nennt ${said(recorded)}.`,
  'gtin of another pack': ({ named, recorded }) =>
    `Die Meldung nennt die GTIN ${named}; die hier aufgezeichnete ${recorded} ist derselbe Artikel in anderer Packung.`,
  'gtin equal, named otherwise': ({ named, recorded }) =>
    `Die GTIN ist die der Meldung, aber dort heißt es ${said(named)} und hier ${said(recorded)}.`,
  'names equal, other gtin': ({ named, recorded }) =>
    `Die Namen sind die der Meldung, aber dort steht die GTIN ${named} und hier ${recorded}.`,
  'product name equal, other maker': ({ named, recorded }) =>
    `Der Produktname ist der der Meldung, aber dort steht der Hersteller ${said(named)} und hier ${said(recorded)}.`,
  'only product name': () => 'Die Meldung nennt das Produkt ohne seinen Hersteller.',
  'maker similar': ({ named, recorded }) =>
    `Die Meldung nennt den Hersteller ${said(named)}, hier steht ${said(recorded)}: fast dasselbe.`,
  'product name similar': ({ named, recorded }) =>
    `Die Meldung nennt das Produkt ${said(named)}, hier steht ${said(recorded)}: fast dasselbe, oder ein Teil davon.`,
  'shade similar': ({ named, recorded }) =>
    `Die Meldung nennt den Farbton ${said(named)}, hier steht ${said(recorded)}: fast dasselbe.`,
  'no shade on record': ({ named }) =>
    `Die Meldung nennt den Farbton ${said(named)}; hier ist keiner aufgezeichnet.`,
  'no gtin on record': ({ named }) =>
    `Die Meldung nennt das Produkt nur durch die GTIN ${named}; hier ist keine aufgezeichnet.`,
  'only maker': ({ recorded }) => `Die Meldung nennt nur den Hersteller ${said(recorded)} und kein Produkt.`,
  'only shade': ({ recorded }) => `Vom Produkt nennt die Meldung nur den Farbton ${said(recorded)}.`,
  'no product named': () => 'Die Meldung nennt kein Produkt.',
  'slight likeness': ({ named, recorded }) =>
    `Die Meldung nennt ${said(named)}, was kaum zu ${said(recorded)} passt; aber die Chargennummer ist gleich.`,
  'all lots named': () => 'Die Meldung nennt alle Chargen.',
  'code equal': ({ named }) => `Die Meldung nennt die Nummer ${named}.`,
  'code in range': (facts) => `Die Nummer ${facts.recorded} liegt im Bereich ${ends(facts)}.`,
  'use-by in span': (facts) => `Die Haltbarkeit ${facts.recorded} liegt im Zeitraum ${ends(facts)}.`,
  'manufactured in span': (facts) =>
    `Der Herstellungstag ${facts.recorded} liegt im Zeitraum ${ends(facts)}.`,
  'code equal, other use-by': (facts) =>
    `Die Meldung nennt die Nummer ${facts.named} mit der Haltbarkeit ${ends(facts)}; hier steht ${facts.recorded}.`,
  'code in range, other use-by': (facts) =>
    `Die Nummer liegt im Bereich ${facts.named}, den die Meldung mit der Haltbarkeit ${ends(facts)} nennt; hier steht ${facts.recorded}.`,
  'other spacing': ({ named, recorded }) =>
    `Die Meldung nennt ${named}, hier steht ${recorded}: Nur Leerzeichen, Bindestriche oder ein Wort davor sind anders.`,
  'look-alikes': ({ named, recorded }) =>
    `Die Meldung nennt ${named}, hier steht ${recorded}: Anders sind nur Zeichen, die gleich aussehen.`,
  'look-alike of range': (facts) =>
    `Die Nummer ${facts.recorded} liegt im Bereich ${ends(facts)}, wenn Satzzeichen und gleich aussehende Zeichen nicht zählen.`,
  'leading zeros': ({ named, recorded }) =>
    `Die Meldung nennt ${named}, hier steht ${recorded}: Nur Nullen am Anfang sind anders.`,
  'range shows other length': (facts) =>
    `Die Zahl von ${facts.recorded} liegt im Bereich ${ends(facts)}, ist aber nicht mit so vielen Stellen geschrieben; Nullen am Anfang können fehlen.`,
  'range perhaps': (facts) =>
    `Die Nummer ${facts.recorded} kann im Bereich ${ends(facts)} liegen, je nachdem, wie er gemeint ist.`,
  slip: ({ named, recorded }) =>
    `Die Meldung nennt ${named}, hier steht ${recorded}: Ein Zeichen fehlt, ist zu viel, anders oder vertauscht.`,
  'slip from range': (facts) =>
    `Die Nummer ${facts.recorded} ist einen Schreibfehler vom Bereich ${ends(facts)} entfernt.`,
  'use-by overlaps span': (facts) =>
    `Das Etikett zeigt nur Monat oder Jahr, spätestens ${facts.recorded}; ein Teil davon liegt im Zeitraum ${ends(facts)}.`,
  'no use-by on record': (facts) =>
    `Die Meldung nennt die Haltbarkeit ${ends(facts)}; hier ist keine aufgezeichnet.`,
  'no manufacture date on record': (facts) =>
    `Die Meldung nennt, was ${ends(facts)} hergestellt wurde; hier ist kein Herstellungstag aufgezeichnet.`,
  'code unreadable': () => 'Die Nummer dieser Charge war nicht zu lesen.',
  'no code printed': () => 'Von dieser Charge ist keine Nummer aufgezeichnet.',
  'range not understood': (facts) =>
    `Welche Nummern zwischen ${facts.from} und ${facts.through} liegen, ist nicht klar; jede Charge des Produkts kann es.`,
  'open-ended': () => 'Die Meldung sagt, dass auch andere als die genannten Chargen gemeint sein können.',
  'no lots named': () => 'Die Meldung nennt keine Chargen dieses Produkts; jede kann gemeint sein.',
  'corrected code': ({ recorded }) =>
    `Die Nummer ${recorded} war von dieser Charge aufgezeichnet, bevor sie berichtigt wurde; auf dem Etikett kann sie stehen.`,
};

const ends = ({ from, through }: { from?: string | null; through?: string | null }) =>
  through == null ? `ab ${from ?? 'Beginn'}` : from == null ? `bis ${through}` : `${from} bis ${through}`;
const said = (text: string | null | undefined) => (text == null || text === '' ? 'nichts' : `„${text}“`);
