const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
const days = (count: number) => plural(count, 'day', 'days');
const orders = (count: number) => plural(count, 'order', 'orders');

export const suppliersTexts = {
  /** Who sells to the studio: terms and offers. */
  suppliers: {
    page: 'Suppliers',
    title: 'Suppliers',
    lead: 'On what terms they deliver and what they offer. A plan orders only what is offered.',
    list: 'All suppliers',
    listHint: 'By name, with how long their orders take.',
    none: 'No supplier is known yet. Add one under Makers and suppliers, or while you receive goods.',
    toRegister: 'To makers and suppliers',
    supplier: 'Supplier',
    noTerms: 'no terms yet',
    noTermsYet: 'No terms are set.',
    open: 'Terms and offers',
    openOf: (name: string) => `Terms and offers of ${name}`,
    offers: (count: number) =>
      count === 0 ? 'offers nothing yet' : `offers ${plural(count, 'product', 'products')}`,
    takes: (median: number, most: number) =>
      median === most ? `takes ${days(median)}` : `usually ${days(median)}, 19 of 20 within ${days(most)}`,
    ordersOn: (weekdays: string) => `orders on ${weekdays}`,
    minimumOf: (amount: string) => `smallest order ${amount}`,
    deliveryOf: (amount: string) => `delivery ${amount}`,
    freeFrom: (amount: string) => `free delivery from ${amount}`,

    leadTime: 'How long orders take',
    leadTimeHint: 'In calendar days from ordering to arrival, learnt from what was ordered and received.',
    leadTimeBasis: {
      assumed: (_: number) => 'Nothing is known yet, so an assumption stands.',
      quoted: (_: number) => 'As the supplier says; no order was seen yet.',
      learnt: (count: number) => `Learnt from ${orders(count)}.`,
      'quoted and learnt': (count: number) =>
        `Learnt from ${orders(count)}; what the supplier says counts as three more.`,
    },
    leadTimeWithin: (median: number, most: number) =>
      median === most
        ? `Orders take ${days(median)}.`
        : `Half of the orders arrive within ${days(median)}, 95 of 100 within ${days(most)}.`,
    leftOut: (count: number) =>
      count === 1
        ? 'One arrival does not count: its day of ordering lies after it, or more than a year before.'
        : `${count} arrivals do not count: their days of ordering lie after them, or more than a year before.`,

    terms: 'Terms',
    termsHint: 'What is left empty is not known, and plans say what they assume instead.',
    notKnown: 'not known',
    days,
    quoted: 'Days until it delivers',
    quotedHint: 'Calendar days, as the supplier says.',
    orderDays: 'Days for ordering',
    orderDaysHint: 'On which you order. None: on any day.',
    anyDay: 'any day',
    minimum: 'Smallest order',
    minimumIn: (currency: string) => `Smallest order, in ${currency}`,
    minimumHint: 'Of the goods, without delivery.',
    delivery: 'One delivery costs',
    deliveryIn: (currency: string) => `One delivery costs, in ${currency}`,
    deliveryHint: 'It is shared by all that comes with it.',
    free: 'Free delivery from',
    freeIn: (currency: string) => `Free delivery from, in ${currency}`,
    freeHint: 'Orders of so much are delivered for nothing.',
    mailAddress: 'Orders go to',
    mailAddressHint: 'The e-mail address of the supplier. Only who may place orders sees it.',
    customerNumber: 'Our customer number',
    customerNumberHint: 'It stands on orders.',
    otherCurrency: (theirs: string, ours: string) =>
      `These amounts were in ${theirs}, and the studio counts in ${ours} now: write them anew.`,
    noAmount: (currency: string) => `Write an amount in ${currency}, such as 12.50`,

    offered: 'Offered',
    offeredHint: 'What you can order here, in which packs and at what price.',
    noneOffered: 'Nothing is offered yet. Add what you can order here, so that plans may choose it.',
    noneOfferedRead: 'Nothing is offered yet.',
    addOffer: 'Add an offer',
    addOfferHint: 'Look for the product, then say how it is packed and what it costs.',
    whichProduct: 'Which product is offered?',
    offerOf: (product: string) => `Offer of ${product}`,
    addOfferSubmit: 'Add the offer',
    packBottles: 'Bottles in a pack',
    packBoxes: 'Boxes in a pack',
    boxPieces: 'Pieces in a box',
    minimumPacks: 'Packs to order at least',
    prices: 'Price of a pack',
    pricesHint: 'Where many cost less each, add from how many on.',
    packPrice: (currency: string) => `A pack costs, in ${currency}`,
    fromPacks: (break_: number) => `Price ${break_ + 1}: from so many packs`,
    packPriceThen: (break_: number, currency: string) => `Price ${break_ + 1}: a pack costs, in ${currency}`,
    addPrice: 'Add a price for more packs',
    removePrice: 'Remove',
    removePriceOf: (break_: number) => `Remove price ${break_ + 1}`,
    orderCode: 'Order number of the supplier',
    orderCodeHint: 'May be left empty.',
    lifeOnArrival: 'Days it keeps on arrival',
    lifeOnArrivalHint: 'Unopened. Left empty: learnt.',
    ownLeadTime: 'Days until it comes',
    ownLeadTimeHint: 'Only where it differs from the supplier’s.',

    packOf: (containers: number, pieces: number) =>
      pieces === 1
        ? containers === 1
          ? 'single'
          : `packs of ${containers}`
        : containers === 1
          ? `boxes of ${pieces}`
          : `packs of ${containers} boxes of ${pieces}`,
    atLeast: (packs: number) => `at least ${plural(packs, 'pack', 'packs')}`,
    orderCodeIs: (code: string) => `order number ${code}`,
    ownTakes: (count: number) => `takes ${days(count)}`,
    keeps: (count: number) => `keeps ${days(count)} on arrival`,
    aPack: (price: string) => `${price} a pack`,
    aPackFrom: (packs: number, price: string) => `${price} from ${packs} packs on`,
    change: 'Change',
    changeOf: (product: string) => `Change the offer of ${product}`,
    end: 'End',
    endOf: (product: string) => `End the offer of ${product}`,
    endQuestion: (product: string) =>
      `${product} is not offered here any more. What was ordered by it stays as it was; offer it anew if it comes back.`,
    ended: 'ended',
    endedOffers: 'Offered before',
    notInCurrency: (ours: string) => `not in ${ours}: plans leave it out`,
    pricesAnew: (theirs: string, ours: string) =>
      `The prices were in ${theirs}. Write them in ${ours}, so that plans can use the offer.`,
    productArchived: 'the product is archived: nothing of it is ordered',
  },
};
