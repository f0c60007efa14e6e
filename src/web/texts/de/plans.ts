import type { plansTexts as english, LineFacts } from '../en/plans.js';
import {
  planOtherSetting,
  planReasons,
  planReasonsInGeneral,
  planSettingNames,
  planUnitPrices,
} from './plan-reasons.js';

const plural = (amount: number, one: string, many: string) => `${amount} ${amount === 1 ? one : many}`;

type Said<Name extends keyof LineFacts> = Pick<LineFacts, Name>;
const here = ({ here, onTheWay }: Said<'here' | 'onTheWay'>) =>
  onTheWay === null ? `Vorrätig: ${here}` : `Vorrätig: ${here}, unterwegs: ${onTheWay}`;
const lasts = ({ days, isOneDay, ...facts }: Said<'here' | 'onTheWay' | 'days' | 'isOneDay'>) =>
  `${here(facts)}. ${facts.onTheWay === null ? 'Das' : 'Zusammen'} reicht etwa ${days} ${isOneDay ? 'Tag' : 'Tage'}.`;
const waste = ({ waste }: Said<'waste'>) =>
  waste === null ? '' : ` Zu erwartender Verlust durch Ablauf: ${waste}.`;

export const plansTexts: typeof english = {
  plans: {
    pages: { plan: 'Bestellplan', whatIf: 'Was wäre, wenn' },
    title: 'Was zu bestellen ist',
    titleOf: (day) => `Plan vom ${day}`,
    lead: (day, days) => `Gerechnet am ${day}, für die ${plural(days, 'Tag', 'Tage')} von da an.`,
    older: (day) =>
      `Dieser Plan ist vom ${day}. Was seither geschah, berücksichtigt er nicht: Lassen Sie neu planen.`,

    pieces: (written) => `${written} Stück`,
    packs: (packs) => plural(packs, 'Packung', 'Packungen'),
    days: (days) => plural(days, 'Tag', 'Tage'),
    chances: {
      hardly: 'so gut wie ausgeschlossen',
      oneIn: (number) => `1 von ${number}`,
      nearlyCertain: 'so gut wie sicher',
    },

    none: 'Es gibt noch keinen Plan',
    noneHint:
      'Ein Plan wägt ab, was gebucht ist, was sonst kommt, was da ist und wann es endet, und sagt, was wann und wie viel zu bestellen ist.',
    noneSteps: [
      'Sagen Sie, wer Ihnen was verkauft, in welchen Packungen und zu welchem Preis: Angebote Ihrer Lieferanten.',
      'Führen Sie Sitzungen, Bestand und Bestückungslisten wie gewohnt: Daraus wird gelernt, was gebraucht wird; bis dahin wird es angenommen.',
      'Lassen Sie den ersten Plan machen. Von da an entsteht jede Nacht einer.',
    ],
    toSuppliers: 'Zu Lieferanten und ihren Angeboten',
    nothingPlanned: 'In diesem Plan steht nichts',
    nothingPlannedHint:
      'Kein Produkt wurde verwendet, ist da, wird angeboten oder steht auf einer Bestückungsliste; es war nichts zu planen. Fügen Sie Produkte und Angebote hinzu, oder legen Sie Sitzungen an, und planen Sie neu.',

    make: 'Jetzt planen',
    makeAnew: 'Neu planen',
    states: {
      waiting: 'wartet',
      running: 'wird gerechnet',
      done: 'fertig',
      cancelled: 'angehalten',
      failed: 'fehlgeschlagen',
    },
    running: 'Der Plan wird gerechnet',
    waiting: 'Der Plan wartet, bis er an der Reihe ist',
    progress: (done, all) => `${done} von ${plural(all, 'Artikel', 'Artikeln')}`,
    stop: 'Anhalten',
    stopped: 'Der Lauf wurde angehalten, bevor er fertig war.',
    failed: 'Der Lauf ist fehlgeschlagen.',
    olderShown: 'Gezeigt wird, was davor gerechnet wurde; jederzeit kann neu gerechnet werden.',
    tryAgain:
      'Es kann neu gerechnet werden; schlägt es wieder fehl, sagen Sie es denen, die den Dienst betreiben.',
    same: 'Seit dem Plan davor hat sich nichts geändert, was zählt; gezeigt werden seine Zeilen, und nichts wurde noch einmal gerechnet.',

    sums: 'Was dabei herauskommt',
    sumsNames: {
      today: 'heute zu bestellen',
      withDelivery: 'mit Lieferung',
      waste: 'zu erwartender Verlust',
      held: 'gesperrt, ausgelassen',
    },
    containers: (containers) => `${containers} Behälter`,
    caution:
      'Ein Plan rechnet nur. Er setzt sich über kein Datum und keine Sperre hinweg: Was gesperrt oder abgelaufen ist, bleibt außen vor, und was auf dem Etikett steht, gilt.',

    today: 'Heute bestellen',
    nothingToday: 'Heute muss nichts bestellt werden.',
    orderTo: (supplier) => `Bestellung bei ${supplier}`,
    orderToday: 'heute zu bestellen',
    orderBy: (day) => `zu bestellen am ${day}`,
    lineNumber: (line) => `Zeile ${line}`,
    lines: (lines) => plural(lines, 'Zeile', 'Zeilen'),
    goods: 'Ware',
    delivery: 'Lieferung',
    freeDelivery: 'kostenlos',
    freeFrom: (money) => `Ab ${money} mehr ist die Lieferung kostenlos.`,
    total: 'insgesamt',
    minimumOrder: 'Mindestbestellung',
    minimumReached: 'erreicht',
    minimumReachedByAdding: 'erreicht durch das, was mitbestellt wird',
    minimumMissing: (money) => `${money} fehlen`,
    minimumChoices: {
      anyway: (money) => `So bestellen, wenn der Lieferant es nimmt, obwohl ${money} fehlen.`,
      wait: (day, money) =>
        `Warten bis ${day}, wenn mehr fällig ist. Das kostet voraussichtlich ${money} mehr.`,
      add: (packs, what, money) => `${packs} von ${what} dazunehmen, für ${money}.`,
    },
    minimumChoicesTitle: 'Was sich wegen der Mindestbestellung tun lässt',
    basketReasons: {
      due: '',
      'shares the delivery': 'mitbestellt, damit sich die Lieferkosten teilen',
      'reaches the minimum': 'mitbestellt, um die Mindestbestellung zu erreichen',
      'reaches free delivery': 'mitbestellt, damit die Lieferung kostenlos ist',
    },
    draft: 'Diese Bestellung entwerfen',
    draftAgain: (supplier) => `Noch einmal entwerfen: ${supplier}`,
    drafted: 'Steht schon in:',
    orderOfPlan: (number, state) => `Bestellung ${number}, ${state}`,
    toDrafted: 'Zur Bestellung, in der es steht',
    draftOf: (supplier) => `Diese Bestellung entwerfen: ${supplier}`,

    decisions: {
      'order now': 'heute bestellen',
      'order later': 'später bestellen',
      'order for the appointment': 'für den Termin bestellen',
      'let run out': 'nur noch aufbrauchen',
      enough: 'genug vorrätig',
      'cannot be ordered': 'nicht bestellbar',
    },
    sections: {
      'order now': 'Heute bestellen',
      'order later': 'Später bestellen',
      'order for the appointment': 'Für den Termin bestellen',
      'let run out': 'Nur noch aufbrauchen',
      enough: 'Genug vorrätig',
      'cannot be ordered': 'Nicht bestellbar',
    },
    sectionHints: {
      'order now': '',
      'order later': 'Am genannten Tag oder früher, zusammen mit einer anderen Bestellung.',
      'order for the appointment':
        'Wird zu selten gebraucht, um es vorrätig zu halten: Das meiste würde ungenutzt ablaufen. Bestellt wird, wenn ein Termin dafür gebucht ist.',
      'let run out': 'Wird aufgebraucht, solange es haltbar ist, und nicht mehr bestellt.',
      enough: 'Vorrat und Lieferungen, die unterwegs sind, reichen.',
      'cannot be ordered':
        'Kein Lieferant ist bekannt, der es verkauft. Fügen Sie ein Angebot hinzu, und planen Sie neu.',
    },
    addOffer: 'Angebot hinzufügen',
    figures: {
      order: 'bestellen',
      cost: 'Kosten',
      on: 'am',
      here: 'vorrätig',
      onTheWay: 'unterwegs',
      weekly: 'je Woche',
      short: 'geht sonst aus',
    },
    notes: {
      'pack exceeds need': 'selbst die kleinste Packung läuft ab, bevor sie verbraucht ist',
      'price break taken': 'Mengenpreis genutzt',
      'minimum packs forced': 'Mindestmenge',
      'order day forced earlier': 'früher bestellt, wegen der Bestelltage',
      'on hold ignored': 'ein Teil ist gesperrt',
      'lead time beyond life': 'die Lieferung braucht länger, als die Ware hält',
      'no order day': 'kein Bestelltag',
      'nothing fits the date': 'nichts davon lässt sich rechtzeitig verbrauchen',
      'full target bounded': 'Ziel von 100 %',
      'target of zero': 'Ziel von 0 %',
      'too late': 'kommt zu spät',
      'no order in time': 'was fehlt, kann nicht früher hier sein',
    },

    assumptions: 'Was angenommen wurde',
    assumptionsHint: 'Bis es eingestellt oder gelernt ist. Jede Annahme kann ändern, was geraten wird.',
    noAssumptions: 'Nichts: Alles war eingestellt oder gelernt.',
    forItems: (items) => `Für ${items} Artikel.`,
    toSettings: 'Zu den Einstellungen der Planung',

    all: 'Alle',
    somebody: 'jemand',
    sameInBrief: 'nichts hatte sich geändert',
    onlyWhatIf: 'Das fragt nur, was wäre, wenn: Bestellt wird daraus nichts.',
    earlier: 'Frühere Pläne',
    earlierHint: 'Der letzte zuerst.',
    toEarlier: 'Zu früheren Plänen',
    added: (packs) => `${plural(packs, 'Packung', 'Packungen')} mehr als allein nötig`,
    toLatest: 'Zum letzten Plan',
    noneEarlier: 'Noch keine.',
    byItself: 'von selbst',
    askedFor: (name, when) => `${when}, ${name}`,
    dueToday: (lines) => `${plural(lines, 'Zeile', 'Zeilen')} an dem Tag zu bestellen`,
    took: (seconds) =>
      seconds < 1 ? 'dauerte keine Sekunde' : `dauerte ${plural(seconds, 'Sekunde', 'Sekunden')}`,

    toLevels: 'Bestellpunkte als Mindestbestände übernehmen',

    fan: {
      none: 'Zu wenig ist bekannt, um es zu zeichnen.',
      median: 'die Mitte: ebenso oft mehr wie weniger',
      narrow: 'in der Hälfte aller Fälle (25 bis 75 %)',
      wide: 'in neun von zehn Fällen (5 bis 95 %)',
      asTable: 'Dasselbe in Zahlen',
      day: 'Tag',
      levels: { p5: '5 %', p25: '25 %', p50: '50 %', p75: '75 %', p95: '95 %' },
    },
  },

  planSentences: {
    'order now': ({ ordered, shortOn, short, shortAfter, isLate, ...facts }) =>
      `Heute ${ordered ?? 'nichts'} bestellen. ${here(facts)}; ohne Bestellung geht es${shortOn === null ? ' vielleicht' : ` voraussichtlich um den ${shortOn}`} aus (Wahrscheinlichkeit: ${short}). ${isLate ? 'Schon bevor sie kommt, kann etwas fehlen. ' : ''}Mit Bestellung: ${shortAfter}.${waste(facts)}`,
    'order later': ({ ordered, on, ...facts }) =>
      `${on === null ? 'Später' : `Am ${on}`} ${ordered ?? 'mehr'} bestellen. ${lasts(facts)}${waste(facts)}`,
    'order for the appointment': ({ weekly, ordered, on, ...facts }) =>
      ordered === null
        ? `Erst bestellen, wenn ein Termin dafür gebucht ist. Gebraucht werden nur ${weekly} je Woche. ${here(facts)}.${waste(facts)}`
        : `${on === null ? '' : `Am ${on} `}${ordered} für die gebuchten Termine bestellen. ${here(facts)}.${waste(facts)}`,
    'let run out': ({ weekly, ...facts }) =>
      `Aufbrauchen und nicht mehr bestellen. ${here(facts)}; gebraucht werden ${weekly} je Woche.${waste(facts)}`,
    enough: ({ short, isUnneeded, ...facts }) =>
      isUnneeded
        ? `${here(facts)}. Voraussichtlich braucht es niemand.${waste(facts)}`
        : `${lasts(facts)} Wahrscheinlichkeit, dass es ausgeht: ${short}.${waste(facts)}`,
    'cannot be ordered': ({ short, ...facts }) =>
      `Kein Lieferant bietet es an. ${here(facts)}. Wahrscheinlichkeit, dass es ausgeht: ${short}.${waste(facts)}`,
  },

  planReasons,
  planReasonsInGeneral,
  planSettingNames,
  planOtherSetting,
  planUnitPrices,
};
