import type { DecisionAssumption, DecisionNote } from '../../../reorder/decision/decision-notes.js';
import type { Reason } from '../../../reorder/decision/explanation.js';
import type { DemandAssumption } from '../../../reorder/demand/demand-of-item.js';

type Say = (written: Record<string, string>) => string;
type Known = (Reason | DecisionNote | DecisionAssumption | DemandAssumption)['code'];

/** The sentences of reasons, remarks and assumptions of a plan, by their codes. */
export const planReasons: Record<Known, Say> & Record<string, Say> = {
  'booked need': ({ units, sessions, booked, until }) =>
    `Gebucht bis ${until}: ${booked} ${booked === '1' ? 'Sitzung' : 'Sitzungen'}; voraussichtlich ${sessions} davon brauchen zusammen ${units}.`,
  'course need': ({ units, courses, until }) =>
    `Bis ${until}: ${courses} ${courses === '1' ? 'Schulung' : 'Schulungen'} mit ${units}.`,
  'touch-ups owed': ({ units, sessions, until }) =>
    `Bis ${until} noch zu buchen: etwa ${sessions} ${sessions === '1' ? 'Nachbehandlung' : 'Nachbehandlungen'} mit ${units}.`,
  'unforeseen need': ({ units, unitsPerWeek, until }) =>
    `Noch von niemandem gebucht: etwa ${unitsPerWeek} je Woche, bis ${until} also ${units}.`,
  'no need expected': ({ until }) => `Bis ${until} wird nichts davon gebraucht.`,
  'in stock': ({ units, opened }) => `Da: ${units}; angebrochene Behälter: ${opened}.`,
  expires: ({ units, wasteMinor, firstOn }) =>
    `${units} davon laufen voraussichtlich ab, zuerst am ${firstOn}: ein Verlust von ${wasteMinor}.`,
  'on the way': ({ units, likely }) => `${units} sind unterwegs und wohl am ${likely} da.`,
  'on hold': ({ units }) => `${units} sind gesperrt und zählen nicht.`,
  'runs short': ({ chance, on, until }) =>
    `Aussicht, dass es ohne Bestellung bis ${until} ausgeht: ${chance}; voraussichtlich um den ${on}.`,
  lasts: ({ chance, until }) => `Aussicht, dass es bis ${until} reicht: ${chance}.`,
  'lead time': ({ typicalDays, days95 }) =>
    `Eine Lieferung braucht meist ${typicalDays} Tage, 19 von 20 höchstens ${days95}.`,
  order: ({ packs, units, on, priceMinor }) => `${packs} (${units}) am ${on} bestellen, für ${priceMinor}.`,
  covers: ({ days, until, chanceAfter }) =>
    `Ist die Lieferung da, reicht es etwa ${days} ${days === '1' ? 'Tag' : 'Tage'}, bis ${until}. Aussicht, dass es trotzdem ausgeht: ${chanceAfter}.`,
  'why not less': ({ packs, moreMinor, unmetUnits }) =>
    `Nur ${packs}: voraussichtlich ${moreMinor} teurer, bei ${unmetUnits} ungedecktem Bedarf.`,
  'why not more': ({ packs, moreMinor, wasteUnits }) =>
    `${packs} stattdessen: voraussichtlich ${moreMinor} teurer, bei ${wasteUnits} Verlust.`,
  'why not earlier': ({ on, moreMinor }) =>
    `Schon am ${on} zu bestellen wäre voraussichtlich ${moreMinor} teurer.`,
  'why not later': ({ on, moreMinor }) =>
    `Erst am ${on} zu bestellen wäre voraussichtlich ${moreMinor} teurer.`,
  'pack exceeds need': ({ packUnits, wasteMinor }) =>
    `Die kleinste Bestellung hat ${packUnits}, mehr, als haltbar verbraucht werden kann: Davon geht voraussichtlich einiges verloren (${wasteMinor}).`,
  range: ({ choice, costPerYearMinor, otherwise }) =>
    `Gewählt: ${choice}, ${costPerYearMinor} im Jahr. Sonst: ${otherwise}.`,
  'booked in time': ({ share, days95, sessionsPerYear, unmetPerYear }) =>
    `${share} der Sitzungen werden mehr als ${days95} Tage vorher gebucht, früh genug, um dafür zu bestellen; von ${sessionsPerYear} im Jahr gingen etwa ${unmetPerYear} leer aus, was in den Kosten enthalten ist.`,
  'appointments covered': ({ sessions, until }) =>
    `Für ${sessions} gebuchte Sitzungen bis ${until} ist genug da.`,
  'appointments to order for': ({ sessions, units, firstOn }) =>
    `Aus dem Regal nicht zu bedienen: ${sessions} gebuchte ${sessions === '1' ? 'Sitzung' : 'Sitzungen'} ab ${firstOn}; es fehlen ${units}.`,
  'no offer': () => 'Kein Angebot ist bekannt; fügen Sie eines hinzu.',

  'price break taken': ({ fromPacks, savedMinor }) =>
    `Ab ${fromPacks} gilt ein besserer Preis; das spart ${savedMinor}.`,
  'minimum packs forced': ({ minimumPacks }) => `Kleinste Bestellung beim Lieferanten: ${minimumPacks}.`,
  'order day forced earlier': ({ wanted, on }) =>
    `Am ${wanted} nimmt der Lieferant keine Bestellung an; darum schon am ${on}.`,
  'on hold ignored': ({ units }) => `${units} sind gesperrt und wurden nicht mitgezählt.`,
  'lead time beyond life': ({ leadTimeDays, lifeDays }) =>
    `Die Lieferung kann ${leadTimeDays} Tage brauchen, länger als die ${lifeDays} Tage, die es hält.`,
  'no order day': ({ until }) => `Bis ${until} gibt es keinen Tag, an dem bestellt werden kann.`,
  'nothing fits the date': ({ lifeDays }) =>
    `In den ${lifeDays} Tagen, die es hält, wird voraussichtlich keine ganze Packung verbraucht.`,
  'full target bounded': ({ units, paths }) =>
    `Ein Ziel von 100 % hat keine endliche Menge: Gedeckt ist der größte Bedarf von ${paths} Verläufen, ${units}.`,
  'target of zero': () =>
    'Bei einem Ziel von 0 % kostet nichts, was fehlt; darum lohnt sich keine Bestellung.',
  'too late': ({ shortChance, arrival }) =>
    `Aussicht, dass es schon fehlt, bis die Lieferung am ${arrival} da ist: ${shortChance}.`,
  'no need': () => 'Es wird kein Bedarf erwartet.',

  'unit cost from offer': () =>
    'Was ein Teil des Vorrats kostete, ist nicht aufgezeichnet: Gerechnet wird mit dem Preis des günstigsten Angebots.',
  'unit cost unknown': () => 'Der Preis dessen, was da ist, ist nicht bekannt; Verlust zählt darum mit null.',
  'life on arrival unlimited': () =>
    'Wie lange es nach der Ankunft hält, ist nicht bekannt; angenommen ist: ohne Ende.',
  'setting out of range': ({ setting, given, taken }) =>
    `Die Einstellung ${setting} ist ${given} und damit außerhalb des Erlaubten; gerechnet wurde mit ${taken}.`,
  'usual amount from expected uses': ({ units }) =>
    `Ein üblicher Gebrauch ist aus dem erwarteten genommen: ${units}.`,
  'usual amount unknown': () =>
    'Wie viel ein üblicher Gebrauch braucht, ist nicht bekannt; angenommen ist eine Einheit.',
  'delivery shared': ({ lines, shareMinor }) =>
    `Eine Lieferung teilen sich üblicherweise ${lines} Zeilen; auf diese kommen ${shareMinor}.`,
  'looked ahead': ({ horizonDays, tailDays }) =>
    `Vorausgeschaut wurde ${horizonDays} Tage, und ${tailDays} weitere für das, was übrig bleibt.`,

  'service target assumed': ({ perMille }) =>
    `Kein Ziel ist eingestellt: ${perMille} des Bedarfs sollen gedeckt sein.`,
  'order cost assumed': ({ costMinor }) =>
    `Was das Aufgeben einer Bestellung kostet, ist nicht eingestellt: Gerechnet wird mit ${costMinor}.`,
  'holding cost assumed': ({ perMille }) =>
    `Was das Halten von Vorrat kostet, ist nicht eingestellt: Gerechnet wird mit ${perMille} seines Preises im Jahr.`,
  'lead time assumed': ({ supplier, days }) =>
    `${supplier} nennt keine Lieferzeit, und keine Lieferung ist bekannt: Gerechnet wird mit ${days} Tagen.`,
  'life on arrival assumed': ({ supplier, days }) =>
    `Wie lange hält, was ${supplier} bringt, ist nicht bekannt: Gerechnet wird mit ${days} Tagen.`,
  'delivery cost assumed': ({ supplier }) =>
    `Was eine Lieferung von ${supplier} kostet, ist nicht bekannt: Gerechnet wird ohne.`,
  'opened life unlimited': () =>
    'Wie lange es geöffnet hält, ist nicht bekannt: Ein geöffneter Behälter wird bis zu seinem Datum verwendet.',
  'overdue order counted on': () =>
    'Eine Bestellung ist später als je eine: Mit ihr wird trotzdem gerechnet, in ein paar Tagen.',
  'cannot be computed': () =>
    'Bei uns ist etwas schiefgegangen, es ließ sich nicht berechnen: Entscheide von Hand. Was es war, steht im Protokoll des Dienstes.',
  'overdue order left out': ({ order, pieces }) =>
    `Bestellung ${order} ist so spät, dass sie als verloren gilt: Mit ihren ${pieces} Stück wird nicht gerechnet. Zieh sie zurück, oder schreib auf, wann sie kommt.`,
  'approved order counted on': ({ order, pieces }) =>
    `Bestellung ${order} ist freigegeben und noch nicht gesendet: Mit ihren ${pieces} Stück wird gerechnet, als ginge sie heute hinaus.`,
  'drafted already': ({ order, pieces }) =>
    `${pieces} Stück stehen im Entwurf der Bestellung ${order}; mit ihm wird erst gerechnet, wenn er freigegeben ist.`,
  'every lot is caught on arrival': ({ product }) =>
    `${product} ist zurückgerufen, und zwar nicht nur einzelne Chargen: Was davon kommt, wird sofort gesperrt; es wird nicht bestellt, und mit nichts davon wird gerechnet.`,
  'some lots are caught on arrival': ({ product, lots }) =>
    `Von ${product} sind einige Chargen zurückgerufen und werden beim Eintreffen gesperrt: ${lots}. Gerechnet wird damit, dass andere kommen.`,
  'belongs to single artists': ({ pieces }) =>
    `${pieces} Stück gehören einzelnen; sie zählen, wer immer sie braucht.`,
  'goes with its owner': ({ pieces }) =>
    `${pieces} Stück gehören jemandem, der geht: Sie zählen bis zum letzten Tag.`,
  'owner has left': ({ pieces }) => `${pieces} Stück gehören jemandem, der gegangen ist; sie zählen nicht.`,
  'offer left out, other currency': ({ supplier }) =>
    `Ein Angebot von ${supplier} ist in einer anderen Währung als der des Studios; es bleibt außer Betracht.`,
  'offer left out, product archived': ({ supplier }) =>
    `Ein Angebot von ${supplier} gilt einem archivierten Produkt; es bleibt außer Betracht.`,
  'terms in another currency left out': ({ supplier }) =>
    `Mindestbestellung und Lieferkosten von ${supplier} sind in einer anderen Währung als der des Studios; sie bleiben außer Betracht.`,
  'content of a delivery unknown': ({ supplier, on }) =>
    `Was eine für ${on} erwartete Lieferung von ${supplier} enthält, ist nicht bekannt: Mit ihr wird nicht gerechnet.`,
  'planned without a day': ({ sessions }) => `Geplante Sitzungen ohne Tag: ${sessions}; sie zählen nicht.`,
  'past and never closed': ({ sessions }) =>
    `Für einen vergangenen Tag geplante und nie abgeschlossene Sitzungen: ${sessions}; sie zählen nicht.`,
  'course without kit list': ({ courses }) =>
    `Gebuchte Schulungen ohne Packliste für ihr Verfahren: ${courses}; je Teilnehmer wird gerechnet, was eine Erstbehandlung braucht.`,
  'replaced by another': () => 'Ein anderes Produkt tritt an seine Stelle: Was übrig ist, wird aufgebraucht.',
  'changed by the basket': ({ packs, on, ownPacks, ownOn }) =>
    `Zusammen mit anderen Produkten des Lieferanten: ${packs} am ${on}; für sich allein wären es ${ownPacks} am ${ownOn}, womit das Folgende vergleicht.`,

  'no history': () => 'Es wurde noch nie verwendet; der Bedarf ist angenommen.',
  'short history': () => 'Es wird erst seit kurzem verwendet: Die Vorhersage ist grob.',
  'level assumed': () => 'Wie oft es gebraucht wird, ist angenommen, weil zu wenig bekannt ist.',
  'amount from kit list': () =>
    'Wie viel eine Sitzung braucht, steht auf der Bestückungsliste und ist noch nicht gelernt.',
  'amount assumed': () => 'Wie viel eine Sitzung braucht, ist angenommen.',
  'return rate assumed': () => 'Wie viele zur Nachbehandlung wiederkommen, ist angenommen.',
  'return delay assumed': () => 'Wann Nachbehandlungen gebucht werden, ist angenommen.',
  'booking curve assumed': () => 'Wie lange im Voraus gebucht wird, ist angenommen.',
  'attendance assumed': () => 'Wie viele gebuchte Sitzungen stattfinden, ist angenommen.',
  'weekdays assumed': () => 'An welchen Wochentagen gearbeitet wird, ist angenommen.',
  'history of predecessor': () => 'Der Verlauf des Produkts, an dessen Stelle es tritt, zählt mit.',
  'artist leaves': () => 'Wer es verwendet, geht; der Bedarf endet mit dem letzten Tag.',
  'bookings after the last day': () => 'Für jemanden, der geht, sind Sitzungen nach dem letzten Tag gebucht.',

  // Of a look back.
  'weekly look': ({ days }) =>
    `Plan und feste Bestände sehen alle ${days} Tage ins Regal; der Plan, der jede Nacht entsteht, sieht öfter hin.`,
  'fewer paths': ({ paths }) => `Jede Entscheidung wägt ${paths} Verläufe ab, weniger als ein Plan.`,
  'terms of today': () =>
    'Preise, Packungen, Lieferzeiten, Haltbarkeit bei der Ankunft und Einstellungen sind die von heute, und eine Bestellung braucht die übliche Zeit.',
  'lists of today': () =>
    'Bestückungslisten, Zeiträume für Nachbehandlungen und eine eingestellte Rückkehrquote sind die von heute: Was sie waren, ist nicht aufbewahrt.',
  'bookings known in part': () =>
    'Von den Buchungen von damals sind die bekannt, die stattfanden und deren Buchungstag aufgeschrieben ist. Abgesagte, Kurse und Nachbehandlungen ohne diesen Tag fehlen; der Plan wusste also weniger, als er gewusst hätte.',
  'first expired first': () =>
    'Was zuerst endet, wird zuerst verwendet, und was endet, am selben Tag entsorgt: in allen dreien, auch „wie bestellt wurde“, was von dem abweichen kann, was geschah.',
  'no holds': () =>
    'Sperren, Übungsbestand, Zählungen, Bruch und Ware von oder an andere Studios bleiben außen vor.',
  'gifts come to all': () =>
    'Geschenke, Muster, Anfangsbestand und was vorher bestellt war, kommen in allen dreien.',
  'no shared baskets': () =>
    'Bestellungen zählen Artikel für Artikel, jede mit ihrem Anteil an einer Lieferung: Zusammengelegt wird nichts.',
  'shortage as weighed': () => 'Was fehlt, kostet, was der Plan selbst dafür angesetzt hat.',
  'amounts assumed': ({ needs }) =>
    `${needs} Verwendungen ohne aufgeschriebene Menge, oder für die nichts da war, zählen wie übliche.`,
};
