import type { todayTexts as english } from '../en/today.js';

export const todayTexts: typeof english = {
  day: {
    title: 'Heute',
    lead: 'Für wen als Nächstes bereitgelegt wird. Kundinnen und Kunden stehen hier nur mit ihrem Zeichen.',
    list: 'Sitzungen von heute',
    listHint: 'Nach dem Tag des Studios.',
    none: 'Für heute ist nichts geplant.',
    earlier: 'Tabletts, die noch bereitliegen',
    earlierHint: 'Von anderen Tagen, noch nicht abgeschlossen.',
    setUp: 'Tablett bereitlegen',
    setUpOf: (reference) => `Tablett bereitlegen für ${reference}`,
    toTray: 'Zum Tablett',
  },
};
