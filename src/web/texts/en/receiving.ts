import type { LabelSheetName } from '../../../stock/label-sheets.js';
import type { SameCodeDecision } from '../../../stock/lot-match.js';
import type { PieceFault } from '../../../stock/planned-containers.js';
import type { LotReceiptReason } from '../../../stock/receipt-reasons.js';
import type { CodeState } from '../../../stock/vocabulary.js';

const plural = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;

export const receivingTexts = {
  receiving: {
    title: 'Receive',
    lead: 'Scan what arrived, look it over, take it in at once.',
    scanTitle: 'Scan',
    scanTitleHint: 'Scan each box or bottle. Nothing has to be pressed between two scans.',
    scan: 'Symbol or lot',
    scanHint: 'A hand-held scanner types here. Without one, type the lot from the label.',
    read: 'Read it',
    byHand: 'Without a symbol: choose the product',
    waiting: (count: number) => `${plural(count, 'scan waits', 'scans wait')} to be read; nothing is lost.`,
    sendAgain: 'Read again',
    unreadable: (text: string) => `“${text}” cannot be read as a symbol.`,
    noGoods: 'This symbol names neither a product nor a lot, as on a parcel. Scan what is inside.',
    ownLabel: (code: string) =>
      `${code} is one of your own labels, so it stands on something that is here already. Scan the maker’s symbol.`,
    notOwnLabel: 'It is the maker’s symbol',
    scannedNew: (name: string) => `${name}: a new line.`,
    scannedUnknown: 'This is not known yet. Say below what it is; you can scan on meanwhile.',
    scannedMore: (name: string, quantity: string) =>
      `${name}: one more by its serial number, ${quantity} now.`,
    scannedSamePiece: (name: string) =>
      `${name}: this very piece was scanned already, by its serial number. It is not counted again.`,

    lines: 'What arrived',
    linesHint: 'The line that was scanned last stands on top.',
    outstandingOf: (number: number) => `Still to come of order ${number}`,
    outstandingHint: 'What is taken in with this delivery counts for it by itself; the rest stays expected.',
    outstanding: (pieces: number, ordered: number) =>
      `${pieces} of ${ordered} ${ordered === 1 ? 'piece' : 'pieces'}`,
    nothingOutstanding: 'All of it came.',
    toOrder: (number: number) => `To order ${number}`,
    noLines: 'Nothing yet.',
    unknownProduct: 'Which product?',
    pieces: (count: number) => plural(count, 'piece', 'pieces'),
    packs: (quantity: string, each: number) => `${quantity} × ${each} pieces`,
    lot: (code: string) => `lot ${code}`,
    usableThrough: (day: string) => `usable through ${day}`,
    usableThroughMonth: (day: string) => `usable through ${day} (only the month is given)`,
    typedUseBy: (text: string) => `use by ${text}`,
    noUseBy: 'no use-by date',
    change: 'Change',
    changeOf: (name: string) => `Change the line ${name}`,
    done: 'Done',
    takeOut: 'Take out',
    takeOutOf: (name: string) => `Take out the line ${name}`,
    wasTakenOut: (name: string) => `Taken out: ${name}.`,
    bringBack: 'Bring it back',

    again: (count: number) =>
      count === 1
        ? 'The same symbol was scanned again. Is that another one?'
        : `The same symbol was scanned ${count} times more. Are those others?`,
    againOf: (name: string) => `${name}, scanned again`,
    countMore: (count: number) => `+${count}`,
    sameOne: 'No, the same one',
    somethingElse: 'Something else: a line of its own',

    whichProduct: 'Which product is this?',
    unknownGtin: (gtin: string) => `The number ${gtin} is not in the register yet. What is it?`,
    unknownForArtist:
      'Choose the product for this delivery. It is counted as one piece each; an owner or manager can add the number to the register.',
    product: 'Product',
    chooseProduct: 'A product that is there',
    makeProduct: 'A new product',
    joinTo: 'It belongs to',
    otherProduct: 'It is another product',
    joining: (name: string) => `Joining the number to ${name} …`,

    fieldsOf: (name: string) => `What is said of ${name}`,
    scannedSays: (facts: string) => `Scanned: ${facts}.`,
    gtin: (gtin: string) => `number ${gtin}`,
    gtinUnknown: 'not in the register',
    madeOn: (day: string) => `made on ${day}`,
    serial: (serial: string) => `serial ${serial}`,
    typeInstead: 'It does not fit the package: type it',
    typeInsteadOf: (name: string) => `It does not fit the package: type it, for ${name}`,
    codeState: 'Lot on the label',
    codeStates: {
      printed: 'printed',
      'none printed': 'none printed',
      unreadable: 'cannot be read',
    } satisfies Record<CodeState, string>,
    lotStates: {
      printed: 'lot printed',
      'none printed': 'no lot printed',
      unreadable: 'lot cannot be read',
    } satisfies Record<CodeState, string>,
    lotCode: 'Lot',
    lotCodeHint: 'As printed, with spaces and hyphens inside it.',
    batchCode: 'Second code, if there is one (batch)',
    useBy: 'Use-by date',
    useByHint:
      'Year first, as exactly as printed: 2028-10-31; 2028-10 when only the month is printed; 2028 when only the year.',
    noUseByPrinted: 'None is printed',
    quantity: 'How many',
    quantityOfPacks: (each: number) => `How many, of ${each} pieces each`,
    makesPieces: (count: number) => `These are ${plural(count, 'piece', 'pieces')}.`,
    piecesEach: 'Pieces in each box',
    place: 'Where it goes',
    usualPlace: 'As the whole delivery',
    faulty: 'Not in order',
    faultyHint:
      'These are taken in too and put on hold, so that they can be sent back. What is missing is not counted.',
    pieceFaults: {
      'broken seal': 'Pieces with a broken seal',
      'damaged package': 'Pieces in a damaged package',
    } satisfies Record<PieceFault, string>,
    more: 'More: made on, owner, price, opened',
    manufacturedOn: 'Made on',
    openedOn: 'Came opened, since',
    openedOnHint: 'For a bottle that was opened before it came: its life counts from that day.',
    left: 'Millilitres left in each',
    leftHint: 'An estimate. Left empty: what the label says.',
    owner: 'Whose it is',
    ownerHint: 'Another artist who lays it on a tray is warned.',
    ownedByStudio: 'The studio’s',
    price: (currency: string) => `Price of one piece, in ${currency}`,
    priceOfPiece: (price: string) => `${price} a piece`,

    joins: 'This lot is here already: it becomes more of it.',
    noDate: 'no date',
    sameCode: (code: string, recorded: string, given: string) =>
      `The lot ${code} is on record with ${recorded}, but here it is ${given}. What is right?`,
    sameCodeHint: 'Compare with the package first. A slip is mended in the date above.',
    decisions: {
      'separate lot': {
        label: 'Both: two lots',
        hint: () => 'The maker used one code twice. They are kept apart.',
      },
      'keep recorded date': {
        label: 'The date on record',
        hint: (recorded) => `This package is misprinted: it joins the lot with ${recorded}.`,
      },
      'correct recorded date': {
        label: 'The date on this package',
        hint: (_, given) => `The record was a slip: the whole lot gets ${given}.`,
      },
    } as Record<SameCodeDecision, { label: string; hint: (recorded: string, given: string) => string }>,

    delivery: 'Delivery',
    deliveryHint: 'From the delivery note; it can be filled in first or last.',
    origin: 'How it came',
    origins: {
      purchase: 'bought',
      'gift or sample': 'a gift or sample',
      'opening stock': 'was here before Lotward',
    },
    noSupplier: 'Not known',
    reference: 'Number of the delivery note or invoice',
    referenceHint: 'Left empty: there is none.',
    orderedOn: 'Ordered on',
    orderedOnHint: 'So that it becomes known how long the supplier takes.',
    putAwayAt: 'Where it is put away',
    putAwayAtHint: 'Single lines can go elsewhere.',

    review: 'Take in',
    reviewHint: 'Everything is recorded at once, or nothing.',
    total: (lines: number, pieces: number) =>
      `${plural(lines, 'line', 'lines')}, ${plural(pieces, 'piece', 'pieces')}`,
    nothingYet: 'There is nothing to take in yet. Scan something, or choose a product.',
    unsettled: (count: number) =>
      `Nothing was recorded yet: ${plural(count, 'line has', 'lines have')} something to be settled.`,
    toLine: (name: string) => `To the line ${name}`,
    lacks: {
      product: 'Say which product it is.',
      lot: 'Type the lot, or say that none is printed or that it cannot be read.',
      useBy: 'Type the use-by date, or tick that none is printed.',
      useByUnreadable: 'The use-by date cannot be read. Write it year first, such as 2028-10-31 or 2028-10.',
      quantity: 'How many there are must be a whole number from 1.',
      faulty: 'The pieces that are not in order must be whole numbers, together no more than came.',
      price: 'The price must be a number, such as 12.50.',
      left: 'The millilitres that are left must be a number, such as 7.5.',
      again: 'Answer whether the symbol that was scanned again is another one.',
      decision: 'Decide which use-by date is right.',
      place: 'Choose where it goes.',
    },
    takeIn: 'Take in',

    takenIn: (lines: number, containers: number) =>
      `Taken in: ${plural(lines, 'line', 'lines')}, ${plural(containers, 'bottle or box', 'bottles and boxes')}.`,
    someHeld: (count: number) =>
      `${plural(count, 'hold was', 'holds were')} placed: see below. What is on hold is not offered until somebody decides.`,
    nextDelivery: 'The next delivery',
    toDelivery: 'Show this delivery',
    made: 'What was made',
    madeHint: 'Lots, and the label code of each bottle or box.',
    newLot: 'new lot',
    moreOfLot: 'more of a lot that was here',
    held: (isLot: boolean, reason: string) =>
      `${isLot ? 'The lot' : 'What is faulty'} is on hold: ${reason}.`,
    holdReasons: {
      'no lot printed': 'no lot is printed',
      'lot unreadable': 'the lot cannot be read',
      'no use-by printed': 'no use-by date is printed',
      'already past': 'its use-by date has passed',
      'broken seal': 'the seal is broken',
      'damaged package': 'the package is damaged',
    } satisfies Record<LotReceiptReason | PieceFault, string>,
    containers: (count: number) => `${plural(count, 'label', 'labels')}:`,
  },

  deliveries: {
    title: 'Deliveries',
    lead: 'What arrived and when.',
    list: 'Deliveries',
    listHint: 'The latest first.',
    none: 'Nothing has arrived yet.',
    one: 'Delivery',
    lines: (count: number) => plural(count, 'line', 'lines'),
    show: 'Show',
    from: (supplier: string) => `from ${supplier}`,
    reference: (number: string) => `number ${number}`,
    orderedOn: (day: string) => `ordered ${day}`,
    arrived: 'What arrived',
    arrivedHint: 'Lots as they stand now.',
    noCode: 'no lot known',
    toLot: (code: string) => `To the lot ${code}`,
    printLabels: 'Print labels of this delivery',
  },

  labels: {
    title: 'Labels',
    lead: 'Each bottle and box carries a code of its own, by which it is known at the tray.',
    which: 'Of what',
    whichHint: 'Choose a product, or come here from a delivery or a lot.',
    orDelivery: 'Or choose a delivery',
    choose: 'Bottles and boxes',
    chooseHint: {
      delivery: 'Of the delivery, as far as they are still here.',
      lot: 'Of the lot, as far as they are still here.',
      product: 'Of the product, as far as they are still here.',
    },
    none: 'Nothing of it is here.',
    all: 'Tick all',
    noneOfThem: 'Tick none',
    print: 'Print labels',
    printHint: 'As a PDF. Print it at its real size, without fitting it to the page.',
    sheet: 'Sheet',
    sheetHint: 'The small ones of the roll fit around a 10 mL bottle.',
    sheets: {
      'A4 sheet': 'A4, 65 of 38.1 × 21.2 mm',
      roll: 'Roll, 25 × 13 mm',
    } satisfies Record<LabelSheetName, string>,
    startAt: 'First label at position',
    startAtHint: (most: number) =>
      `1 to ${most}, row by row: a sheet used in part can go through the printer again.`,
    noSuchStart: (most: number) => `A sheet has the positions 1 to ${most}.`,
    tooMany: (count: number, most: number) =>
      `${count} are chosen; ${most} are printed at a time. Print the others from the delivery.`,
    onSheets: (labels: number, pages: number) =>
      `${plural(labels, 'label', 'labels')} on ${plural(pages, 'sheet', 'sheets')}.`,
    onRoll: (labels: number) => `${plural(labels, 'label', 'labels')} on the roll.`,
    submit: (count: number) => `Make the PDF of ${plural(count, 'label', 'labels')}`,
    made: 'The labels are made and saved as labels.pdf.',
    open: 'Open them',
  },
};
