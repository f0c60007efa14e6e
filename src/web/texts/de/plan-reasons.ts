import type {
  planReasons as english,
  planReasonsInGeneral as englishInGeneral,
  planUnitPrices as englishUnitPrices,
} from '../en/plan-reasons.js';

const one = (count: string | undefined, single: string, several: string) =>
  `${count} ${count === '1' ? single : several}`;
/** What another choice costs more, which may be less than can be paid. */
const dearer = (moreMinor: string | undefined, amount = 0) =>
  Math.round(amount) === 0 ? 'voraussichtlich etwa gleich teuer' : `voraussichtlich ${moreMinor} teurer`;
const days = (count: string | undefined) => one(count, 'Tag', 'Tage');
/** After `mit` and `von`. */
const daysDative = (count: string | undefined) => one(count, 'Tag', 'Tagen');

/** The sentences of reasons, remarks and assumptions of a plan and of a look back, by their codes. */
export const planReasons: typeof english = {
  'booked need': (written, { sessions = 0, booked = 0 }) =>
    `Gebucht bis ${written.until}: ${one(written.booked, 'Sitzung', 'Sitzungen')}${sessions < 0.8 * booked ? `; etwa ${written.sessions} davon ${sessions === 1 ? 'braucht' : 'brauchen'} es` : ''}, ${booked === 1 ? '' : 'zusammen '}etwa ${written.units}.`,
  'course need': ({ units, courses, until }) =>
    `Bis ${until}: ${one(courses, 'Schulung', 'Schulungen')} mit etwa ${units}.`,
  'touch-ups owed': ({ units, sessions, until }) =>
    `Bis ${until} noch zu buchen: etwa ${one(sessions, 'Nachbehandlung', 'Nachbehandlungen')} mit etwa ${units}.`,
  'unforeseen need': ({ units, unitsPerWeek, until }) =>
    `Für das, was noch niemand gebucht hat: etwa ${unitsPerWeek} je Woche, bis ${until} also ${units}.`,
  'no need expected': ({ until }) => `Bis ${until} wird voraussichtlich nichts davon gebraucht.`,
  'in stock': (written, { units, opened = 0 }) => {
    if (units === 0) return 'Verwendbar ist nichts mehr da.';
    return opened === 0
      ? `Vorrätig: ${written.units}.`
      : `Vorrätig: ${written.units}; angebrochene Behälter: ${written.opened}.`;
  },
  expires: ({ units, wasteMinor, firstOn }) =>
    `Was voraussichtlich ungenutzt abläuft: etwa ${units} (${wasteMinor}), zuerst am ${firstOn}.`,
  'on the way': ({ units, likely }) => `Unterwegs: ${units}, voraussichtlich bis ${likely} da.`,
  'on hold': ({ units }) => `Gesperrt und nicht mitgezählt: ${units}.`,
  'runs short': (written, { on }) =>
    `Wahrscheinlichkeit, dass es ohne Bestellung bis ${written.until} ausgeht: ${written.chance}${on === 0 ? '' : `; am ehesten um den ${written.on}`}.`,
  lasts: ({ chance, until }) =>
    `Wahrscheinlichkeit, dass es mit dem, was unterwegs ist, bis ${until} reicht: ${chance}.`,
  'lead time': (written, { days95 }) =>
    days95 === 0
      ? 'Eine Lieferung kommt noch am Tag der Bestellung.'
      : `Eine Lieferung braucht meist ${days(written.typicalDays)}; 19 von 20 brauchen höchstens ${days(written.days95)}.`,
  order: ({ packs, units, on, priceMinor }) => `${packs} (${units}) am ${on} bestellen, für ${priceMinor}.`,
  covers: (written) =>
    `Ist die Lieferung da, fehlt voraussichtlich erst in etwa ${daysDative(written.days)} wieder etwas, um den ${written.until}. Wahrscheinlichkeit, dass es trotzdem ausgeht: ${written.chanceAfter}.`,
  'why not less': (written, { moreMinor }) =>
    `Nur ${written.packs}: ${dearer(written.moreMinor, moreMinor)}, und ${written.unmetUnits} vom Bedarf blieben ungedeckt.`,
  'why not more': (written, { moreMinor }) =>
    `Stattdessen ${written.packs}: ${dearer(written.moreMinor, moreMinor)}, und ${written.wasteUnits} würden verfallen.`,
  'why not earlier': (written, { moreMinor }) =>
    `Schon am ${written.on} zu bestellen wäre ${dearer(written.moreMinor, moreMinor)}.`,
  'why not later': (written, { moreMinor }) =>
    `Erst am ${written.on} zu bestellen wäre ${dearer(written.moreMinor, moreMinor)}.`,
  'pack exceeds need': ({ packUnits, wasteMinor }) =>
    `Die kleinste Bestellung umfasst ${packUnits}. So viel lässt sich nicht verbrauchen, solange es haltbar ist: Ein Teil verfällt voraussichtlich (${wasteMinor}).`,
  range: ({ choice, costPerYearMinor, otherwise }) =>
    `Gewählt: ${choice}, ${costPerYearMinor} im Jahr. Sonst: ${otherwise}.`,
  'booked in time': (written, { share = 0 }) =>
    share <= 0
      ? `Niemand bucht so früh, wie eine Lieferung braucht (${days(written.days95)} bei 19 von 20).`
      : `Vom Bedarf ist ${written.share} früher gebucht, als eine Lieferung braucht (${days(written.days95)} bei 19 von 20). Von ${one(written.sessionsPerYear, 'Sitzung', 'Sitzungen')} im Jahr müssten etwa ${written.unmetPerYear} ohne auskommen; das ist in den Kosten enthalten.`,
  'appointments to order for': ({ sessions, units, firstOn }) =>
    `Aus dem Vorrat nicht zu decken: ${one(sessions, 'gebuchte Sitzung', 'gebuchte Sitzungen')} ab ${firstOn}; es fehlen ${units}.`,
  'no offer': () =>
    'Kein Lieferant ist bekannt, der es verkauft: Tragen Sie ein Angebot ein, damit es bestellt werden kann.',

  'price break taken': ({ fromPacks, savedMinor }) =>
    `Der niedrigere Preis ab ${fromPacks} ist erreicht; das spart ${savedMinor}.`,
  'minimum packs forced': ({ minimumPacks }) => `Der Lieferant verkauft mindestens ${minimumPacks}.`,
  'order day forced earlier': ({ wanted, on }) =>
    `Der ${wanted} ist kein Bestelltag; bestellt wird schon am ${on}.`,
  'on hold ignored': ({ units }) => `Gesperrt und nicht mitgezählt: ${units}.`,
  'lead time beyond life': ({ leadTimeDays, lifeDays }) =>
    `Eine Lieferung kann ${days(leadTimeDays)} brauchen, länger, als die Ware hält (${days(lifeDays)}).`,
  'no order day': ({ until }) => `Bis ${until} nimmt der Lieferant keine Bestellung an.`,
  'nothing fits the date': ({ lifeDays }) =>
    `In den ${daysDative(lifeDays)}, die es hält, wird voraussichtlich nicht einmal eine Packung verbraucht.`,
  'full target bounded': ({ units, paths }) =>
    `Für ein Ziel von 100 % gibt es keine endliche Menge: Gedeckt ist der größte Bedarf aus ${paths} möglichen Verläufen, ${units}.`,
  'target of zero': () =>
    'Bei einem Ziel von 0 % kostet es nichts, wenn etwas fehlt; darum lohnt sich keine Bestellung.',
  'too late': ({ shortChance, arrival }) =>
    `Wahrscheinlichkeit, dass schon etwas fehlt, bevor die Lieferung da ist (voraussichtlich am ${arrival}): ${shortChance}.`,
  'no order in time': () => 'Was fehlen wird, fehlt, bevor eine Bestellung von heute hier sein könnte.',
  'no need': () => 'Voraussichtlich braucht es niemand.',

  'unit cost from offer': ({ unitMinor }) =>
    `Was ein Teil des Vorrats gekostet hat, ist nicht aufgezeichnet: Gerechnet wird mit dem Preis des billigsten Angebots, ${unitMinor}.`,
  'unit cost unknown': () => 'Was es kostet, ist nicht bekannt: Was davon verfällt, zählt als kostenlos.',
  'life on arrival unlimited': () =>
    'Wie lange es nach der Ankunft hält, ist nicht bekannt: Angenommen ist, dass es nicht abläuft.',
  'setting out of range': ({ setting, given, taken }) =>
    `Außerhalb des Erlaubten: ${setting} ist ${given}; gerechnet wird mit ${taken}.`,
  'usual amount from expected uses': ({ units }) =>
    `Als üblich für eine Verwendung gilt das Mittel der erwarteten: ${units}.`,
  'usual amount unknown': ({ units }) =>
    `Wie viel eine Verwendung braucht, ist nicht bekannt: Angenommen ist ${units}.`,
  'delivery shared': ({ lines, shareMinor }) =>
    `Angenommen ist, dass sich ${one(lines, 'Produkt', 'Produkte')} eine Lieferung teilen: je ${shareMinor}.`,
  'looked ahead': ({ horizonDays, tailDays }) =>
    `Vorausgeschaut wurde ${days(horizonDays)} und weitere ${days(tailDays)}, in denen der Rest verbraucht wird oder abläuft.`,

  'service target assumed': ({ perMille }) =>
    `Kein Ziel ist eingestellt: ${perMille} des Bedarfs sollen gedeckt sein.`,
  'order cost assumed': ({ costMinor }) =>
    `Was das Aufgeben einer Bestellung kostet, ist nicht eingestellt: Gerechnet wird mit ${costMinor}.`,
  'holding cost assumed': ({ perMille }) =>
    `Was das Lagern kostet, ist nicht eingestellt: Gerechnet wird mit ${perMille} des Preises im Jahr.`,
  'lead time assumed': (written) =>
    `${written.supplier} nennt keine Lieferzeit, und noch keine Bestellung ist angekommen: Gerechnet wird mit ${daysDative(written.days)}.`,
  'life on arrival assumed': (written) =>
    `Wie lange hält, was ${written.supplier} liefert, ist nicht bekannt: Gerechnet wird mit ${daysDative(written.days)}.`,
  'delivery cost assumed': ({ supplier }) =>
    `Was eine Lieferung von ${supplier} kostet, ist nicht bekannt: Gerechnet wird ohne Lieferkosten.`,
  'opened life unlimited': () =>
    'Wie lange es geöffnet hält, ist nicht bekannt: Ein geöffneter Behälter gilt bis zu seinem aufgedruckten Datum als verwendbar.',
  'overdue order counted on': () =>
    'Eine Bestellung ist später dran als je eine zuvor: Mit ihr wird trotzdem gerechnet, in einigen Tagen.',
  'cannot be computed': () =>
    'Bei uns ist etwas schiefgegangen, darum ließ es sich nicht berechnen: Entscheiden Sie selbst. Was es war, steht im Protokoll des Dienstes.',
  'overdue order left out': ({ order, pieces }) =>
    `Bestellung ${order} ist so spät dran, dass sie als verloren gilt: Mit ihren ${pieces} Stück wird nicht gerechnet. Bestellen Sie sie ab, oder schreiben Sie auf, wann sie kommt.`,
  'approved order counted on': ({ order, pieces }) =>
    `Bestellung ${order} ist freigegeben und noch nicht gesendet: Mit ihren ${pieces} Stück wird gerechnet, als ginge sie heute hinaus.`,
  'drafted already': ({ order, pieces }) =>
    `Im Entwurf der Bestellung ${order} stehen ${pieces} Stück; mit ihnen wird erst gerechnet, wenn er freigegeben ist.`,
  'every lot is caught on arrival': ({ product }) =>
    `${product} ist als Ganzes zurückgerufen: Was davon kommt, wird sofort gesperrt. Darum wird nichts davon bestellt und mit nichts davon gerechnet.`,
  'some lots are caught on arrival': ({ product, lots }) =>
    `Von ${product} sind einzelne Chargen zurückgerufen und werden bei der Ankunft gesperrt: ${lots}. Gerechnet wird damit, dass andere kommen.`,
  'belongs to single artists': ({ pieces }) =>
    `${pieces} Stück vom Vorrat gehören einzelnen Personen; sie zählen mit, wer immer sie braucht.`,
  'goes with its owner': ({ pieces }) =>
    `${pieces} Stück vom Vorrat gehören jemandem, der das Studio verlässt: Sie zählen bis zu dessen letztem Tag.`,
  'owner has left': ({ pieces }) =>
    `${pieces} Stück vom Vorrat gehören jemandem, der das Studio verlassen hat; sie zählen nicht mit.`,
  'offer left out, other currency': ({ supplier }) =>
    `Ein Angebot von ${supplier} ist in einer anderen Währung als der des Studios und bleibt außer Betracht.`,
  'offer left out, product archived': ({ supplier }) =>
    `Ein Angebot von ${supplier} gilt einem archivierten Produkt und bleibt außer Betracht.`,
  'terms in another currency left out': ({ supplier }) =>
    `Mindestbestellung und Lieferkosten von ${supplier} sind in einer anderen Währung als der des Studios und bleiben außer Betracht.`,
  'content of a delivery unknown': ({ supplier, on }) =>
    `Was die für ${on} erwartete Lieferung von ${supplier} enthält, ist nicht bekannt: Mit ihr wird nicht gerechnet.`,
  'planned without a day': ({ sessions }) => `Geplante Sitzungen ohne Tag, nicht mitgezählt: ${sessions}.`,
  'past and never closed': ({ sessions }) =>
    `Für einen vergangenen Tag geplante, nie abgeschlossene Sitzungen, nicht mitgezählt: ${sessions}.`,
  'course without kit list': ({ courses }) =>
    `Gebuchte Schulungen für Behandlungen ohne Bestückungsliste: ${courses}. Je Person wird gerechnet, was eine Erstbehandlung braucht.`,
  'replaced by another': () => 'Ein anderes Produkt tritt an seine Stelle: Was übrig ist, wird aufgebraucht.',
  'changed by the basket': (written, { ownOn }) =>
    ownOn === 0
      ? `Es wird mit anderen Produkten des Lieferanten mitbestellt, ${written.packs} am ${written.on}; für sich allein würde es nicht bestellt.`
      : `Es wird zusammen mit anderen Produkten des Lieferanten bestellt, ${written.packs} am ${written.on}; für sich allein wären es ${written.ownPacks} am ${written.ownOn}, womit das Folgende vergleicht.`,

  'no history': () => 'Soweit bekannt, wurde es noch nie verwendet.',
  'short history': () => 'Es wird erst seit Kurzem verwendet: Die Vorhersage ist grob.',
  'level assumed': () => 'Wie oft es gebraucht wird, ist angenommen, weil zu wenig bekannt ist.',
  'amount from kit list': () =>
    'Wie viel eine Sitzung braucht, stammt aus der Bestückungsliste und ist noch nicht gelernt.',
  'amount assumed': () => 'Wie viel eine Sitzung braucht, ist angenommen.',
  'return rate assumed': () =>
    'Wie viele zur Nachbehandlung wiederkommen, ist angenommen: Bisher waren es zu wenige.',
  'return delay assumed': () =>
    'Wann jemand zur Nachbehandlung wiederkommt, ist angenommen: Bisher waren es zu wenige.',
  'booking curve assumed': () => 'Wie früh gebucht wird, ist angenommen: Zu wenige Buchungen sind bekannt.',
  'attendance assumed': () =>
    'Wie viele gebuchte Sitzungen stattfinden, ist angenommen: Zu wenige Buchungen sind bekannt.',
  'weekdays assumed': () => 'Alle Wochentage zählen gleich: Zu wenige Sitzungen sind bekannt.',
  'history of predecessor': () =>
    'Die Verwendung des Produkts, an dessen Stelle es tritt, zählt als seine eigene.',
  'artist leaves': () =>
    'Jemand, der es verwendet, verlässt das Studio: Der Bedarf endet mit dem letzten Tag.',
  'bookings after the last day': () =>
    'Für jemanden, der das Studio verlässt, sind Sitzungen nach dem letzten Tag gebucht.',

  // Of a look back.
  'weekly look': (written) =>
    `Plan und feste Bestände sehen alle ${days(written.days)} ins Regal; der Plan, der jede Nacht entsteht, sieht öfter hin.`,
  'fewer paths': ({ paths }) => `Jede Entscheidung wägt ${paths} mögliche Verläufe ab, weniger als ein Plan.`,
  'terms of today': () =>
    'Preise, Packungen, Lieferzeiten, Haltbarkeit bei der Ankunft und Einstellungen sind die von heute, und eine Bestellung braucht die übliche Zeit.',
  'lists of today': () =>
    'Bestückungslisten, Zeiträume für Nachbehandlungen und eine eingestellte Rückkehrquote sind die von heute: Wie sie früher waren, ist nicht aufbewahrt.',
  'bookings known in part': () =>
    'Von den damaligen Buchungen sind die bekannt, die stattfanden und deren Buchungstag aufgeschrieben ist. Abgesagte, Schulungen und Nachbehandlungen ohne diesen Tag fehlen; der Plan wusste also weniger, als er gewusst hätte.',
  'first expired first': () =>
    'Was zuerst abläuft, wird zuerst verwendet, und was abläuft, am selben Tag entsorgt: in allen drei Fällen, auch in „Wie bestellt wurde“, was von dem abweichen kann, was wirklich geschah.',
  'no holds': () =>
    'Sperren, Übungsbestand, Zählungen, Bruch und Ware von anderen oder an andere Studios bleiben außer Betracht.',
  'gifts come to all': () =>
    'Geschenke, Muster, der Anfangsbestand und was vorher bestellt war, kommen in allen drei Fällen an.',
  'no shared baskets': () =>
    'Bestellungen zählen Artikel für Artikel, jede mit ihrem Anteil an einer Lieferung: Sie werden nicht zusammengelegt.',
  'shortage as weighed': () => 'Was fehlt, kostet so viel, wie der Plan selbst dafür angesetzt hat.',
  'amounts assumed': ({ needs }) =>
    `Verwendungen ohne aufgeschriebene Menge, oder für die nichts mehr da war, zählen wie übliche: ${needs}.`,
};

export const planReasonsInGeneral: typeof englishInGeneral = {
  'unit cost from offer':
    'Was ein Teil des Vorrats gekostet hat, ist nicht aufgezeichnet: Gerechnet wird mit dem Preis des billigsten Angebots.',
  'setting out of range':
    'Eine Einstellung liegt außerhalb des Erlaubten: Gerechnet wird mit dem nächsten erlaubten Wert.',
  'usual amount unknown':
    'Wie viel eine Verwendung braucht, ist nicht bekannt: Angenommen ist ein Stück oder ein viertel Milliliter.',
  'usual amount from expected uses': 'Als üblich für eine Verwendung gilt das Mittel der erwarteten.',
  'lead time assumed':
    'Lieferanten nennen keine Lieferzeit, und noch keine Bestellung ist angekommen: Gerechnet wird mit einer üblichen.',
  'life on arrival assumed':
    'Wie lange es nach der Ankunft hält, ist nicht bekannt: Gerechnet wird mit einer üblichen Zeit.',
  'delivery cost assumed':
    'Was eine Lieferung mancher Lieferanten kostet, ist nicht bekannt: Gerechnet wird ohne Lieferkosten.',
  'overdue order left out':
    'Bestellungen sind so spät dran, dass sie als verloren gelten; mit ihnen wird nicht gerechnet. Bestellen Sie sie ab, oder schreiben Sie auf, wann sie kommen.',
  'approved order counted on':
    'Mit Bestellungen, die freigegeben und noch nicht gesendet sind, wird gerechnet, als gingen sie heute hinaus.',
  'drafted already':
    'Einiges steht in Entwürfen von Bestellungen; mit ihnen wird erst gerechnet, wenn sie freigegeben sind.',
  'every lot is caught on arrival':
    'Produkte sind als Ganzes zurückgerufen: Was von ihnen kommt, wird sofort gesperrt. Darum wird nichts davon bestellt und mit nichts davon gerechnet.',
  'some lots are caught on arrival':
    'Von einigen Produkten sind einzelne Chargen zurückgerufen und werden bei der Ankunft gesperrt. Gerechnet wird damit, dass andere kommen.',
  'belongs to single artists':
    'Ein Teil des Vorrats gehört einzelnen Personen; er zählt mit, wer immer ihn braucht.',
  'goes with its owner':
    'Ein Teil des Vorrats gehört jemandem, der das Studio verlässt: Er zählt bis zu dessen letztem Tag.',
  'owner has left': 'Ein Teil des Vorrats gehört jemandem, der das Studio verlassen hat; er zählt nicht mit.',
  'offer left out, other currency':
    'Angebote in einer anderen Währung als der des Studios bleiben außer Betracht.',
  'offer left out, product archived': 'Angebote für archivierte Produkte bleiben außer Betracht.',
  'terms in another currency left out':
    'Mindestbestellungen und Lieferkosten in einer anderen Währung als der des Studios bleiben außer Betracht.',
  'course without kit list':
    'Bei gebuchten Schulungen für Behandlungen ohne Bestückungsliste wird je Person gerechnet, was eine Erstbehandlung braucht.',
};

export const planSettingNames: Record<string, string | undefined> = {
  serviceTargetPerMille: 'der Anteil des Bedarfs, der gedeckt sein soll,',
  shortageCostMinor: 'was eine Sitzung kostet, für die es fehlt,',
  orderCostMinor: 'was eine Bestellung kostet,',
  holdingPerYearPerMille: 'was das Lagern kostet,',
  deliveryCostMinor: 'was eine Lieferung kostet,',
  packPriceMinor: 'der Preis einer Packung',
};
export const planOtherSetting = 'eine Einstellung';

export const planUnitPrices: typeof englishUnitPrices = {
  pieces: (money) => `${money} je Stück`,
  microlitres: (money) => `${money} je Milliliter`,
};
