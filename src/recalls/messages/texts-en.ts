import { productLabel } from '../../catalogue/product-label.js';
import type { MessageTexts } from './message-texts.js';
import { writtenList } from './written-list.js';

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const monthOf = (day: string) => `${months[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;
const dayOf = (day: string) => `${Number(day.slice(8, 10))} ${monthOf(day)}`;
const list = (items: readonly string[]) => writtenList(items, 'and');
const times = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
const between = (first: string, last: string) =>
  first === last ? `on ${dayOf(first)}` : `between ${dayOf(first)} and ${dayOf(last)}`;

/** English. */
export const englishTexts: MessageTexts = {
  heading: 'Product safety recall',
  opening: (audience, { studioName, issuer, reference, issuedOn }, certain) => {
    const who = {
      client: `${studioName} informs you: a product that ${certain ? 'was' : 'may have been'} used on you is being recalled`,
      artist: `${studioName} informs you: a product that you used or have is being recalled`,
      supplier: `${studioName} informs you: a product that you delivered to us is being recalled`,
      authority: `${studioName} reports how it answers the recall of a product`,
    }[audience];
    const notice = [
      issuer === null ? '' : ` by ${issuer}`,
      issuedOn === null ? '' : `, notice of ${dayOf(issuedOn)}`,
      reference === null ? '' : `, reference ${reference}`,
    ].join('');
    return `${who}${notice}.`;
  },
  product: (lot) =>
    [
      `Product: ${productLabel(lot)} (brand ${lot.makerName})`,
      lot.volumeMicrolitres === null ? null : `size ${lot.volumeMicrolitres / 1000} ml`,
      lot.code === null ? 'lot number not printed or not readable' : `lot ${lot.code}`,
      lot.otherCodes.length === 0 ? null : `also known by ${list(lot.otherCodes)}`,
      lot.useBy === null ? null : `use by ${lot.useByMonthOnly ? monthOf(lot.useBy) : dayOf(lot.useBy)}`,
      lot.manufacturedOn === null ? null : `made on ${dayOf(lot.manufacturedOn)}`,
      lot.gtins.length === 0 ? null : `GTIN ${list(lot.gtins)}`,
    ]
      .filter((part) => part !== null)
      .join('; ')
      .concat(
        lot.certainty === 'certain'
          ? '. This lot is recalled.'
          : '. Whether this lot is among those recalled is not settled yet; act as if it were.',
      ),
  lotName: (lot) => `${productLabel(lot)}, ${lot.code === null ? 'lot number unknown' : `lot ${lot.code}`}`,
  whereTheNumberIs: (audience) =>
    audience === 'client'
      ? 'The lot number is printed on the label of the bottle or box, which is kept at the studio.'
      : 'The lot number is printed on the label of the bottle, tube or box.',
  exposure: ({ day, visitKind, bodyPlace, through, certainty, because }, lot, studioName) => {
    const where = `On ${dayOf(day)} at ${studioName} (${englishTexts.visitKinds[visitKind]}, ${englishTexts.bodyPlaces[bodyPlace]})`;
    if (certainty === 'certain') return `${where}, ${lot} was used on you${englishTexts.through[through]}.`;
    const why = because.map((one) => englishTexts.because[one]);
    return `${where}, ${lot} may have been used on you${englishTexts.through[through]}. This is possible and not certain${
      why.length === 0 ? '' : `: ${why.join('; ')}`
    }.`;
  },
  artistPart: ({ sessions, firstDay, lastDay, containers }, lot, studioName) => {
    const used =
      sessions === 0 || firstDay === null || lastDay === null
        ? null
        : `You used ${lot} at ${studioName} ${between(firstDay, lastDay)}, in ${times(sessions, 'session', 'sessions')}.`;
    const has =
      containers.length === 0 ? null : `Of ${lot} you have at ${studioName}: label ${list(containers)}.`;
    return (
      [used, has].filter((part) => part !== null).join(' ') || `${lot} is at ${studioName}, where you work.`
    );
  },
  delivery: ({ day, reference, pieces }, lot, studioName) =>
    `You delivered ${times(pieces, 'piece', 'pieces')} of ${lot} to ${studioName}, received on ${dayOf(day)}${
      reference === null ? '' : `, ${reference}`
    }.`,
  figures: ({ clientsCertain, clientsPossible, clientsTold, firstDay, lastDay }, studioName) =>
    firstDay === null || lastDay === null
      ? `At ${studioName} it was used on no client, as far as is recorded.`
      : `At ${studioName} it was used ${between(firstDay, lastDay)}: on ${times(clientsCertain, 'client', 'clients')} for certain, on ${clientsPossible} more possibly. Told so far: ${clientsTold}.`,
  hazard: (risk) =>
    risk === null
      ? 'Hazard: the notice at hand does not describe it. Until it does, take the product to be dangerous.'
      : `Hazard, as the notice says: ${risk}`,
  stop: (audience, studioName) =>
    ({
      client:
        'What to do: stop. Do not have this product used on you any more, and do not use any of it that you may have yourself. Keep this message.',
      artist:
        'What to do: stop using this product at once and hand none of it on. Put aside every bottle, tube and box of it, sealed or opened, also from travelling cases and practice shelves. Throw nothing away. Give clients no advice on their health; the studio tells them.',
      supplier:
        'What to do: stop selling and distributing these lots at once. Tell us whether further lots are concerned, and how what is left is to be returned or destroyed. We no longer use them, and are putting aside what we have.',
      authority: `What is done: ${studioName} stopped using these lots at once and is putting aside what is left, to be returned or destroyed as instructed. Tell us if more is to be done.`,
    })[audience],
  signs: (signs) =>
    `${
      signs.length === 0
        ? 'Watch the place where it was used, and how you feel.'
        : `Watch for these signs, which the notice names: ${list(signs)}.`
    } If you notice ${signs.length === 0 ? 'any change' : 'one of them or any other change'}, see a doctor, and show them this message.`,
  remedy: (audience, remedy, issuer) => {
    const own =
      audience === 'client' && remedy === null
        ? ` Ask ${issuer === null ? 'us' : `${issuer}, or us,`} for it: in the European Union, Article 37 of Regulation (EU) 2023/988 says what is to be offered to you, free of charge.`
        : '';
    return remedy === null
      ? `Remedy: the notice at hand names none.${own}`
      : `Remedy, as the notice says: ${remedy}`;
  },
  contact: (audience, studioName, contactPoint) => {
    const where = contactPoint === null ? studioName : `${studioName}, ${contactPoint}`;
    return {
      client: `For more information, and to tell us that you received this: ${where}.`,
      artist: `Report back today what you have of it and what you do not have, and ask what you want to know: ${where}.`,
      supplier: `Reply, and tell us what you still have or delivered elsewhere: ${where}.`,
      authority: `For more information, and for your answer: ${where}.`,
    }[audience];
  },
  share: (audience) =>
    ({
      client: 'Please pass this on to anyone else whom it may concern.',
      artist: 'Tell everyone to whom you lent or gave any of it.',
      supplier: 'Pass this on to everyone else to whom you delivered these lots.',
      authority: 'Please pass this on where others are concerned.',
    })[audience],
  visitKinds: {
    'patch test': 'patch test',
    'first session': 'first session',
    'touch-up': 'touch-up',
    refresh: 'refresh',
    correction: 'correction',
    lightening: 'lightening',
    training: 'training',
  },
  bodyPlaces: {
    brows: 'brows',
    'upper eyelids': 'upper eyelids',
    'lower eyelids': 'lower eyelids',
    lips: 'lips',
    areola: 'areola',
    scalp: 'scalp',
    other: 'another place on the body',
  },
  through: {
    direct: '',
    mix: ', mixed with others',
    'house blend': ', in a blend made at the studio',
  },
  because: {
    'lot undecided': 'whether this lot is among those recalled is not settled yet',
    'lot picked from a list':
      'the lot was picked from a list and not read from the label, so that it may have been another one',
    'another open lot that day':
      'another lot is on record, but it was picked from a list, and this one was in use at the studio that day',
  },
};
