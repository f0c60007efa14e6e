import type {
  CodeState,
  ContainerForm,
  HoldKind,
  HoldReason,
  LotCodeKind,
  LotOrigin,
  MovementKind,
} from '../../../stock/vocabulary.js';

const plural = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;

export const stockTexts = {
  find: {
    label: 'Find a label, a lot or a product',
    hint: 'A hand-held scanner types here. Or type the code of our label, a lot, or words of a name.',
    find: 'Find',
    nothing: (text: string) =>
      `Nothing here carries “${text}”: no label, no lot and no product. Compare it with the label, sign by sign, or look through the lots.`,
  },

  levels: {
    title: 'Levels',
    lead: 'How much may still be used, by shade and by configuration. A bottle counts as one, however full.',
    search: 'Shade, product or maker',
    filter: 'Show',
    everything: 'everything',
    filters: {
      low: 'what is low',
      'ending soon': 'what has to be used soon',
      held: 'what is on hold',
      here: 'what is here',
    },
    kinds: { pigments: 'Pigments', cartridges: 'Cartridges', consumables: 'Other things' },
    kindHints: {
      pigments: 'By shade, in bottles.',
      cartridges: 'By configuration, in pieces: cartridges that stand for each other count together.',
      consumables: 'In bottles or pieces.',
    },
    nothingAtAll: 'No product is registered yet. Register one, then record what arrived.',
    nothingFound: 'Nothing fits. Take words away, or show everything.',
    usable: 'usable',
    opened: 'opened',
    reserved: 'on trays',
    held: 'on hold',
    past: 'past its date',
    practice: 'for practice',
    minimum: 'minimum',
    noMinimum: 'none',
    low: 'low',
    endingSoon: (count: number) => `${count} to be used soon`,
    endsBy: (day: string) => `by ${day}`,
    setMinimum: 'Set the minimum',
    setMinimumOf: (name: string) => `Set the minimum of ${name}`,
    minimumHint: 'At or below so many usable pieces it is low, and an alert opens.',
    removeMinimum: 'Take the minimum away',
  },

  amounts: {
    pieces: (count: number) => plural(count, 'piece', 'pieces'),
    about: (pieces: string, volume: string) => `${pieces}, about ${volume}`,
    change: (signed: string) => `${signed} ${signed === '+1' || signed === '-1' ? 'piece' : 'pieces'}`,
  },

  containerForms: { bottle: 'Bottle', box: 'Box' } satisfies Record<ContainerForm, string>,

  conditions: {
    usable: 'may be used',
    'ends soon': 'has to be used soon',
    'no date known': 'no date known',
    expired: 'past its use-by',
    'open too long': 'open too long',
    'practice only': 'for practice only',
    'on hold': 'on hold',
    recalled: 'recalled',
    finished: 'finished',
    discarded: 'gone',
  },

  containers: {
    title: 'Bottles and boxes',
    lead: 'Each by its own label, with the time it has.',
    place: 'Place',
    anywhere: 'anywhere',
    state: 'State',
    here: 'all that is here',
    none: 'Nothing stands there. Choose another place or state.',
  },

  container: {
    title: 'Bottle or box',
    time: 'Its time',
    timeHint: 'It may be used through the end of the day that comes first.',
    through: (day: string) => `Last day: ${day}.`,
    daysLeft: (days: number) =>
      days === 0 ? 'That is today.' : days === 1 ? 'One day is left.' : `${days} days are left.`,
    assumed:
      'The opened life is assumed by the studio, for none is recorded from the label. Compare them: the label comes first.',
    sendingStudio: 'The end of its opened life was told by the studio that sent it here opened.',
    marks: {
      received: (day: string) => `arrived ${day}`,
      opened: (day: string) => `opened ${day}`,
      today: (day: string) => `today, ${day}`,
      'opened life': (day: string) => `opened life ends ${day}`,
      'use-by': (day: string) => `label: use by ${day}`,
    },
    operations: 'Record what happens',
    operationsHint:
      'What happened is recorded even when it should not have. Nothing recorded is ever wiped out.',
    facts: 'Facts',
    state: 'State',
    place: 'Place',
    owner: 'Whose',
    studio: 'the studio’s',
    inIt: 'In it by the book',
    onTrays: 'Of that, on trays',
    received: 'Arrived',
    opened: 'Opened',
    printLabel: 'Print labels',
    nowInIt: (amount: string) => `In it now by the book: ${amount}.`,
    toHistory: 'To the history of the lot',
    nowOfLot: (amount: string) => `Of the lot on hand: ${amount}.`,
  },

  operations: {
    open: 'Open it now',
    count: 'Count',
    move: 'Move',
    finish: 'It is empty',
    'waste pieces': 'Throw pieces away',
    discard: 'Throw away',
    return: 'Send back',
    'keep for practice': 'Keep for practice',
    'correct opened date': 'Correct the day of opening',
    'undo opening': 'It was not opened',
  },
  operationHints: {
    move: 'To another place. Its dates stay as they are.',
    finish:
      'The bottle is recorded as finished, and what the book still shows of it is written off. Only a correction by the owner or manager brings it back.',
    'waste pieces': 'They leave the book as wasted.',
    discard: 'It leaves the book whole, as wasted.',
    return: 'It leaves the book as returned to the supplier.',
    'keep for practice':
      'From then on it is for practice skin only and is never admitted to a tray. This is not taken back.',
    'correct opened date': 'The time it has is counted anew. Both days stay on record.',
    'undo opening':
      'For an opening recorded by mistake: it is sealed again, as long as nothing was taken of it.',
  },
  operationFields: {
    place: 'New place',
    noOtherPlace: 'There is no other place',
    pieces: 'Pieces',
    piecesHint: (most: number) => `Left empty: the whole box. Up to ${most} lie on no tray.`,
    openedOn: 'Opened on',
    reason: 'Reason',
    reasonHint: 'Of the thing and never of a client: it is kept in the clear.',
  },
  recorded: {
    open: 'Recorded as opened. Its opened life runs from now.',
    count: 'The count is booked.',
    move: 'Moved.',
    finish: 'Recorded as finished.',
    'waste pieces': 'The pieces are recorded as wasted.',
    discard: 'Recorded as thrown away.',
    return: 'Recorded as sent back.',
    'keep for practice': 'Kept for practice from now on.',
    'correct opened date': 'The day of opening is corrected.',
    'undo opening': 'Recorded as sealed again.',
  },

  count: {
    pieces: 'Pieces in the box',
    piecesHint: (onTrays: number) =>
      onTrays === 0
        ? 'As many as lie in it.'
        : `As many as lie in it, without the ${onTrays} that lie on trays: these count as here.`,
    difference: (booked: number, present: number, onTrays: number) => {
      const trays = onTrays === 0 ? '' : `, ${onTrays} on trays among them`;
      const difference = present - booked;
      if (difference === 0) return `That is what the book shows: ${booked}${trays}. Nothing will change.`;
      const change = difference > 0 ? `${difference} more` : `${-difference} fewer`;
      return `The book shows ${booked}${trays}. That is ${change}: it will show ${present}.`;
    },
    book: 'Book the count',
    lookForBottle: (amount: string) =>
      `The book shows it here: ${amount}. When it is missing, the book loses all of that; when it turns up, the movement is taken back.`,
    stillThere: 'It is still there',
    missing: 'It is missing',
  },

  lots: {
    title: 'Lots',
    lead: 'The latest first. A lot is one batch of one product; its code finds it, also one that was corrected.',
    state: 'Show',
    states: {
      usable: 'what may be used',
      'ending soon': 'what has to be used soon',
      held: 'what is on hold',
      expired: 'what is past its date',
      empty: 'what is used up',
    },
    ofCode: (code: string) => `With the code ${code}.`,
    ofProduct: (name: string) => `Of ${name}.`,
    all: 'Show all lots',
    none: 'There is no such lot. Show everything, or look for another code.',
  },

  lot: {
    title: 'Lot',
    lot: 'Lot',
    of: (code: string) => `lot ${code}`,
    withoutCode: 'lot without a code',
    maker: 'Maker',
    facts: 'The lot',
    codes: 'Codes printed',
    earlierCodes: 'Codes corrected, which still find it',
    useByFact: 'Label',
    lastDay: (day: string) => `use by ${day}`,
    endOf: {
      month: (day: string) => `use by the end of the month: ${day}`,
      year: (day: string) => `use by the end of the year: ${day}`,
    },
    noUseBy: 'no use-by printed',
    manufacturedOn: 'Made on',
    origin: 'How it came',
    byTheBook: 'by the book',
    empty: 'used up',
    toTrace: 'Who had this lot',
    correct: 'Correct the facts',
    containersHint: 'Those that are here come first.',
  },

  codeStates: {
    printed: 'printed',
    'none printed': 'no code printed',
    unreadable: 'code unreadable',
  } satisfies Record<CodeState, string>,
  lotCodeKinds: { lot: 'lot', batch: 'batch', other: 'other code' } satisfies Record<LotCodeKind, string>,
  lotOrigins: {
    delivery: 'in a delivery',
    blend: 'as a house blend',
    'opening stock': 'as opening stock',
    'late record': 'by a late record',
    transfer: 'from another studio',
  } satisfies Record<LotOrigin, string>,

  correct: {
    codeState: 'Code',
    codeHint: 'As printed, with its spaces and hyphens.',
    addCode: 'Another code is printed too',
    useBy: 'Use by, as printed',
    useByHint: 'Year first: 2027-03-31, or 2027-03 when only the month is printed. Empty: none is printed.',
    manufacturedOn: 'Made on, if printed',
    manufacturedOnHint: 'Year first: 2026-01-05.',
    reason: 'What was wrong',
    separateLot: 'These are two lots all the same',
  },

  history: {
    title: 'History',
    hint: 'Every movement, the latest first, with what was on hand after it. A mistake is taken back by another movement; both stay.',
    after: (amount: string) => `On hand then: ${amount}`,
    reversal: (name: string) => `Taken back: ${name}`,
    reverses: (movement: string) => `Takes back ${movement}.`,
    reversesEarlier: 'Takes back an earlier movement.',
    wasReversed: 'This was taken back.',
    toSession: 'To the session',
    takeBack: 'Take back',
    takeBackOf: (movement: string) => `Take back ${movement}`,
    takeBackReason: 'Why it was a mistake',
  },
  movementKinds: {
    received: 'received',
    produced: 'poured',
    'transferred in': 'moved in',
    adjusted: 'adjusted',
    used: 'used',
    blended: 'poured into a blend',
    wasted: 'wasted',
    returned: 'sent back',
    'transferred out': 'moved out',
  } satisfies Record<MovementKind, string> as Record<string, string | undefined>,

  origin: {
    title: 'Where it came from',
    hint: 'And where it went besides sessions.',
    none: 'Nothing is recorded of that.',
    delivery: (origin: string, when: string) => `${origin}, ${when}`,
    blendedFrom: 'Poured of this lot',
    blendedInto: 'Went into this house blend',
    cameFrom: 'Came from another studio of the chain',
    wentTo: (state: string) => `Sent to another studio of the chain, ${state}`,
  },
  deliveryOrigins: {
    purchase: 'Purchase',
    'gift or sample': 'Gift or sample',
    'opening stock': 'Opening stock',
  },
  transferStates: {
    'in transit': 'on its way',
    arrived: 'arrived',
    'turned up': 'turned up later',
    withdrawn: 'called back',
  },

  holds: {
    title: 'Holds',
    lead: 'What stands on hold is admitted to no tray, nor is any house blend made of it.',
    hint: 'On hold it is admitted to no tray, nor is any house blend made of it.',
    none: 'Nothing is on hold.',
    noneHere: 'It is not on hold and never was.',
    inherited: (count: number) =>
      `${plural(count, 'hold stands', 'holds stand')} on what this was poured of, so it may not be used either.`,
    placeOnLot: 'Put the whole lot on hold',
    placeOnContainer: 'Put this one on hold',
    ofWholeLot: 'the whole lot',
    ofContainer: 'one bottle or box',
    kind: 'Kind of hold',
    kindHints: {
      quarantine: 'Until it is looked at.',
      recall: 'The maker or an authority recalled it.',
      compliance: 'It does not say or hold what the law asks for.',
    } satisfies Record<HoldKind, string>,
    reason: 'Reason',
    note: 'What was seen',
    noteHint: 'If there is more to say. Of the thing and never of a client: it is kept in the clear.',
    since: (when: string) => `Since ${when}`,
    release: 'Release',
    releaseOf: (about: string) => `Release the hold on ${about}`,
    releaseReason: 'Why it may be used again',
    releaseHint:
      'Of the thing and never of a client: it is kept in the clear. The hold stays in its history.',
    released: (when: string, reason: string) => `Released ${when}: ${reason}`,
    askRelease: 'Ask for the release',
    askAgain: 'Ask again',
    askReleaseOf: (about: string) => `Ask for the release of the hold on ${about}`,
    releaseAsked: (who: string, when: string, reason: string) =>
      `${who} asked for the release ${when}: ${reason}`,
    anotherReleases:
      'What is recalled is released by two: another person who may release holds does it now. Where there is none, a photo on the request stands for them.',
    releasePhoto: 'Photo of the thing',
    releasePhotoHint: 'If a picture says more. Another person releases it afterwards.',
    releasePhotoAlone:
      'Needed here: nobody else may release holds in this studio, so a photo stands for the second person. No client may be in it.',
  },
  holdKinds: {
    quarantine: 'Quarantine',
    recall: 'Recall',
    compliance: 'Compliance',
  } satisfies Record<HoldKind, string>,
  holdReasons: {
    'no lot printed': 'no lot printed',
    'lot unreadable': 'lot unreadable',
    'no use-by printed': 'no use-by printed',
    'already past': 'past its date already',
    'broken seal': 'broken seal',
    'damaged package': 'damaged package',
    doubt: 'doubt',
    'recall notice': 'recall notice',
    'label statement missing': 'statement missing on the label',
    other: 'other',
  } satisfies Record<HoldReason, string>,

  trace: {
    titleOfLot: 'Who had this lot',
    titleOfSession: 'What touched the client',
    lead: 'Clients stand here by their reference only.',
    totals: (uses: number, sessions: number, clients: number) =>
      `${plural(uses, 'use', 'uses')} in ${plural(sessions, 'session', 'sessions')}, of ${plural(clients, 'client', 'clients')}.`,
    reversedUses: (count: number) =>
      `${plural(count, 'use was', 'uses were')} recorded by mistake and taken back; they stay visible.`,
    none: 'Nothing of it touched anybody, by the record.',
    uses: 'Every use',
    usesHint: 'In the order in which they happened.',
    columns: {
      client: 'Client',
      session: 'Session',
      lot: 'Lot in hand',
      through: 'Through',
      amount: 'Amount',
    },
    directly: 'directly',
    throughs: { mix: 'a mix', 'house blend': 'a house blend' },
    reversed: 'taken back',
    againstRefusal: 'used against a refusal',
    pieces: (count: number) => plural(count, 'piece', 'pieces'),
    noAmount: 'not known',
    csv: 'All of it as CSV',
    graph: 'As a picture',
    graphHint: 'From the lot at the left to the sessions at the right. Each box is a link.',
    graphLabel: 'The way from lots to sessions, as the table says it. It can be moved sideways.',
    drawn: (sessions: number) => `Drawn are the first ${plural(sessions, 'session', 'sessions')}.`,
    more: (sessions: number) =>
      `${plural(sessions, 'more session is', 'more sessions are')} not drawn; the table and the CSV have them all.`,
    kinds: {
      lot: 'Lot',
      blend: 'House blend',
      container: 'Bottle or box',
      mix: 'Mix',
      session: 'Session',
    },
    sisterLots: 'Other lots with the same code',
    sisterLotsHint: 'Whoever asks for the code means these too.',
    toLot: 'To the lot',
    toSession: 'To the session',
  },
};
