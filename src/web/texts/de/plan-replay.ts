import type { planReplayTexts as english } from '../en/plan-replay.js';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const planReplayTexts: typeof english = {
  replay: {
    page: 'Rückblick',
    title: 'Wären Sie den Plänen gefolgt',
    lead: 'Die Aufzeichnungen werden noch einmal durchgegangen, jede Woche nur mit dem, was damals bekannt war: was nach den Plänen gefehlt hätte und verloren gegangen wäre, neben dem, was wirklich bestellt wurde, und neben festen Beständen.',
    make: 'Jetzt zurückblicken',
    makeAnew: 'Neu zurückblicken',
    progress: {
      running: 'Die Vergangenheit wird durchgegangen',
      waiting: 'Es wartet, bis es an der Reihe ist',
      done: (done, all) => `${done} von ${plural(all, 'Schritt', 'Schritten')}`,
    },
    none: 'Noch hat niemand zurückgeblickt',
    noneHint: 'Es dauert eine Weile und lässt sich jederzeit anhalten. Geändert wird dadurch nichts.',
    tooShort: (recorded, needed) =>
      `Die Aufzeichnungen sind zu kurz für einen Rückblick: Sie haben ${plural(recorded, 'Tag', 'Tage')}, gebraucht werden ${needed}. Fragen Sie später wieder.`,
    all: 'Alle Artikel zusammen',
    span: (from, until, items) => `Vom ${from} bis ${until}, ${items} Artikel.`,
    what: 'Was',
    ways: { plan: 'Nach den Plänen', asOrdered: 'Wie bestellt wurde', fixed: 'Nach festen Beständen' },
    shortDays: 'Tage, an denen etwas fehlte',
    shortItems: 'Artikel, die je fehlten',
    waste: 'Verlust',
    orders: 'Bestellungen',
    cost: 'Kosten',
    costHint:
      'Kosten sind Verlust, Mangel, Bestellen und Vorrat halten, nicht die Ware selbst, auch nicht, was übrig blieb: Wer mehr übrig hat, hat mehr bezahlt. Ein Tag, an dem zwei Artikel fehlten, zählt doppelt.',
    withoutOffer: (items) => `${items} Artikel ausgelassen, weil niemand sie anbietet.`,
    beyondLimit: (items) => `${items} Artikel ausgelassen, weil es so viele sind.`,
    calibration: 'War genug wirklich genug?',
    calibrationHint: (weeks) =>
      `Wie oft eine Menge, die für eine Woche reichen sollte, gereicht hat, über ${plural(weeks, 'Woche', 'Wochen')}.`,
    noCalibration: 'Nichts wurde vorhergesagt, was sich ansehen ließe.',
    level: 'Gezielt auf',
    enough: 'Hat gereicht',
    claimed: 'Hätte reichen sollen',
    forecasts: 'Vorhersagen',
    verdict: 'Urteil',
    verdicts: {
      'as claimed': 'wie behauptet',
      'too seldom': 'zu selten',
      'too often': 'öfter als behauptet',
      'too few to tell': 'zu wenige für ein Urteil',
    },
    lines: 'Artikel für Artikel',
    linesHint: 'Der größte Unterschied zwischen den Plänen und dem, was bestellt wurde, zuerst.',
    needed: (units, from) => `Gebraucht wurden ${units} vom ${from} an.`,
    levels: (minimum, maximum, byHand) =>
      `Feste Bestände: bei ${minimum} bis auf ${maximum}${byHand ? '; der Mindestbestand ist der von Hand gesetzte' : ''}.`,
    unmet: 'Ungedeckter Bedarf',
    leftWorth: 'Am Ende übrig, zu heutigen Preisen',
    assumptionsHint: 'Was nicht geschah, lässt sich nur annehmen.',
  },
};
