import type { stockTexts as english } from '../en/stock.js';

export const stockTexts: typeof english = {
  find: {
    label: 'Etikett, Charge oder Produkt finden',
    hint: 'Ein Handscanner tippt hier hinein. Oder den Code unseres Etiketts, eine Charge oder Wörter eines Namens eintippen.',
    find: 'Finden',
    nothing: (text) =>
      `Nichts hier trägt „${text}“: kein Etikett, keine Charge und kein Produkt. Zeichen für Zeichen mit dem Etikett vergleichen oder die Chargen durchsehen.`,
  },

  levels: {
    title: 'Bestand',
    lead: 'Wie viel noch verwendet werden darf, nach Farbton und nach Konfiguration. Eine Flasche zählt als eine, wie voll sie auch ist.',
    search: 'Farbton, Produkt oder Hersteller',
    filter: 'Zeigen',
    everything: 'alles',
    filters: {
      low: 'was knapp ist',
      'ending soon': 'was bald verwendet werden muss',
      held: 'was gesperrt ist',
      here: 'was da ist',
    },
    kinds: { pigments: 'Pigmente', cartridges: 'Module', consumables: 'Anderes' },
    kindHints: {
      pigments: 'Nach Farbton, in Flaschen.',
      cartridges: 'Nach Konfiguration, in Stück: Module, die einander ersetzen, zählen zusammen.',
      consumables: 'In Flaschen oder Stück.',
    },
    nothingAtAll:
      'Noch ist kein Produkt eingetragen. Erst eines eintragen, dann erfassen, was angekommen ist.',
    nothingFound: 'Nichts passt. Wörter weglassen oder alles zeigen.',
    usable: 'verwendbar',
    opened: 'geöffnet',
    reserved: 'auf Tabletts',
    held: 'gesperrt',
    past: 'abgelaufen',
    practice: 'zum Üben',
    minimum: 'Mindestbestand',
    noMinimum: 'keiner',
    low: 'knapp',
    endsSoon: (day) => `bis ${day} zu verwenden`,
    setMinimum: 'Mindestbestand setzen',
    setMinimumOf: (name) => `Mindestbestand setzen: ${name}`,
    minimumHint: 'Sind nur noch so viele oder weniger verwendbar, ist es knapp und wird gemeldet.',
    removeMinimum: 'Mindestbestand wegnehmen',
  },
};
