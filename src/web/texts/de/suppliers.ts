import type { suppliersTexts as english } from '../en/suppliers.js';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
const days = (count: number) => plural(count, 'Tag', 'Tage');
const withinDays = (count: number) => plural(count, 'Tag', 'Tagen');
const orders = (count: number) => plural(count, 'Bestellung', 'Bestellungen');

export const suppliersTexts: typeof english = {
  suppliers: {
    page: 'Lieferanten',
    title: 'Lieferanten',
    lead: 'Zu welchen Bedingungen sie liefern und was sie anbieten. Ein Plan bestellt nur, was angeboten ist.',
    list: 'Alle Lieferanten',
    listHint: 'Nach Namen, und wie lange Bestellungen bei ihnen dauern.',
    none: 'Noch ist kein Lieferant bekannt. Tragen Sie einen unter Hersteller und Lieferanten ein, oder beim Aufnehmen von Ware.',
    toRegister: 'Zu Herstellern und Lieferanten',
    supplier: 'Lieferant',
    noTerms: 'noch ohne Bedingungen',
    noTermsYet: 'Bedingungen sind nicht eingetragen.',
    open: 'Bedingungen und Angebote',
    openOf: (name) => `Bedingungen und Angebote von ${name}`,
    offers: (count) =>
      count === 0 ? 'bietet noch nichts an' : `bietet ${plural(count, 'Produkt', 'Produkte')} an`,
    takes: (median, most) =>
      median === most
        ? `dauert ${days(median)}`
        : `meist ${days(median)}, 19 von 20 binnen ${withinDays(most)}`,
    ordersOn: (weekdays) => `Bestelltage ${weekdays}`,
    minimumOf: (amount) => `Mindestbestellung ${amount}`,
    deliveryOf: (amount) => `Lieferung ${amount}`,
    freeFrom: (amount) => `Lieferung frei ab ${amount}`,

    leadTime: 'Wie lange Bestellungen dauern',
    leadTimeHint:
      'In Kalendertagen von der Bestellung bis zur Ankunft, gelernt aus dem, was bestellt und aufgenommen wurde.',
    leadTimeBasis: {
      assumed: () => 'Noch ist nichts bekannt, darum gilt eine Annahme.',
      quoted: () => 'Wie der Lieferant sagt; noch kam keine Bestellung an.',
      learnt: (count) => `Gelernt aus ${orders(count)}.`,
      'quoted and learnt': (count) =>
        `Gelernt aus ${orders(count)}; was der Lieferant sagt, zählt wie drei weitere.`,
    },
    leadTimeWithin: (median, most) =>
      median === most
        ? `Bestellungen dauern ${days(median)}.`
        : `Die Hälfte der Bestellungen kommt binnen ${withinDays(median)}, 95 von 100 binnen ${withinDays(most)}.`,
    leftOut: (count) =>
      count === 1
        ? 'Eine Ankunft zählt nicht: Ihr Bestelltag liegt nach ihr oder mehr als ein Jahr davor.'
        : `${count} Ankünfte zählen nicht: Ihre Bestelltage liegen nach ihnen oder mehr als ein Jahr davor.`,

    terms: 'Bedingungen',
    termsHint: 'Was leer bleibt, ist nicht bekannt; Pläne sagen, was sie stattdessen annehmen.',
    notKnown: 'nicht bekannt',
    days,
    quoted: 'Tage bis zur Lieferung',
    quotedHint: 'Kalendertage, wie der Lieferant sagt.',
    orderDays: 'Bestelltage',
    orderDaysHint: 'An denen Sie bestellen. Keiner: an jedem Tag.',
    anyDay: 'an jedem Tag',
    minimum: 'Mindestbestellung',
    minimumIn: (currency) => `Mindestbestellung, in ${currency}`,
    minimumHint: 'Warenwert ohne Lieferung.',
    delivery: 'Eine Lieferung kostet',
    deliveryIn: (currency) => `Eine Lieferung kostet, in ${currency}`,
    deliveryHint: 'Alles, was mitkommt, teilt sie sich.',
    free: 'Lieferung frei ab',
    freeIn: (currency) => `Lieferung frei ab, in ${currency}`,
    freeHint: 'Bestellungen ab diesem Wert werden kostenlos geliefert.',
    mailAddress: 'Bestellungen gehen an',
    mailAddressHint: 'Die E-Mail-Adresse des Lieferanten. Nur wer bestellen darf, sieht sie.',
    customerNumber: 'Unsere Kundennummer',
    customerNumberHint: 'Sie steht auf Bestellungen.',
    otherCurrency: (theirs, ours) =>
      `Diese Beträge waren in ${theirs}, und das Studio rechnet jetzt in ${ours}: Schreiben Sie sie neu.`,
    noAmount: (currency) => `Schreiben Sie einen Betrag in ${currency}, etwa 12,50`,

    offered: 'Angeboten',
    offeredHint: 'Was hier bestellt werden kann, in welchen Packungen und zu welchem Preis.',
    noneOffered:
      'Noch ist nichts angeboten. Tragen Sie ein, was hier bestellt werden kann, damit Pläne es wählen können.',
    noneOfferedRead: 'Noch ist nichts angeboten.',
    addOffer: 'Angebot eintragen',
    addOfferHint: 'Suchen Sie das Produkt, dann sagen Sie, wie es gepackt ist und was es kostet.',
    whichProduct: 'Welches Produkt wird angeboten?',
    offerOf: (product) => `Angebot: ${product}`,
    addOfferSubmit: 'Angebot eintragen',
    packBottles: 'Flaschen je Packung',
    packBoxes: 'Schachteln je Packung',
    boxPieces: 'Stück je Schachtel',
    minimumPacks: 'Packungen mindestens',
    prices: 'Preis einer Packung',
    pricesHint: 'Wo viele je Packung weniger kosten, fügen Sie hinzu, ab wie vielen.',
    packPrice: (currency) => `Eine Packung kostet, in ${currency}`,
    fromPacks: (break_) => `Preis ${break_ + 1}: ab so vielen Packungen`,
    packPriceThen: (break_, currency) => `Preis ${break_ + 1}: eine Packung kostet, in ${currency}`,
    addPrice: 'Preis für mehr Packungen hinzufügen',
    removePrice: 'Entfernen',
    removePriceOf: (break_) => `Preis ${break_ + 1} entfernen`,
    orderCode: 'Bestellnummer des Lieferanten',
    orderCodeHint: 'Kann leer bleiben.',
    lifeOnArrival: 'Tage haltbar bei Ankunft',
    lifeOnArrivalHint: 'Ungeöffnet. Leer: wird gelernt.',
    ownLeadTime: 'Tage, bis es kommt',
    ownLeadTimeHint: 'Nur wo es anders ist als beim Lieferanten sonst.',

    packOf: (containers, pieces) =>
      pieces === 1
        ? containers === 1
          ? 'einzeln'
          : `Packungen zu ${containers}`
        : containers === 1
          ? `Schachteln zu ${pieces}`
          : `Packungen zu ${containers} Schachteln zu ${pieces}`,
    atLeast: (packs) => `mindestens ${plural(packs, 'Packung', 'Packungen')}`,
    orderCodeIs: (code) => `Bestellnummer ${code}`,
    ownTakes: (count) => `dauert ${days(count)}`,
    keeps: (count) => `bei Ankunft noch ${days(count)} haltbar`,
    aPack: (price) => `${price} je Packung`,
    aPackFrom: (packs, price) => `${price} ab ${packs} Packungen`,
    change: 'Ändern',
    changeOf: (product) => `Ändern: Angebot von ${product}`,
    end: 'Beenden',
    endOf: (product) => `Beenden: Angebot von ${product}`,
    endQuestion: (product) =>
      `${product} wird hier nicht mehr angeboten. Was daraus bestellt wurde, bleibt, wie es war; tragen Sie es neu ein, wenn es wiederkommt.`,
    ended: 'beendet',
    endedOffers: 'Früher angeboten',
    notInCurrency: (ours) => `nicht in ${ours}: Pläne lassen es aus`,
    pricesAnew: (theirs, ours) =>
      `Die Preise waren in ${theirs}. Schreiben Sie sie in ${ours}, damit Pläne das Angebot nutzen können.`,
    productArchived: 'das Produkt ist archiviert: Es wird nicht mehr bestellt',
  },
};
