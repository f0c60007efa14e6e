import { productLabel } from '../../catalogue/product-label.js';
import type { MessageTexts } from './message-texts.js';
import { writtenList } from './written-list.js';

const months = [
  'Januar',
  'Februar',
  'März',
  'April',
  'Mai',
  'Juni',
  'Juli',
  'August',
  'September',
  'Oktober',
  'November',
  'Dezember',
];
const monthOf = (day: string) => `${months[Number(day.slice(5, 7)) - 1]} ${day.slice(0, 4)}`;
const dayOf = (day: string) => `${Number(day.slice(8, 10))}. ${monthOf(day)}`;
const list = (items: readonly string[]) => writtenList(items, 'und');
const times = (count: number, one: string, many: string) => `${count} ${count === 1 ? one : many}`;
const between = (first: string, last: string) =>
  first === last ? `am ${dayOf(first)}` : `zwischen dem ${dayOf(first)} und dem ${dayOf(last)}`;

/** German. */
export const germanTexts: MessageTexts = {
  heading: 'Produktsicherheitsrückruf',
  opening: (audience, { studioName, issuer, reference, issuedOn }, certain) => {
    const who = {
      client: certain
        ? `${studioName} teilt Ihnen mit: Ein Produkt, das bei Ihnen verwendet wurde, wird zurückgerufen`
        : `${studioName} teilt Ihnen mit: Ein Produkt, das möglicherweise bei Ihnen verwendet wurde, wird zurückgerufen`,
      artist: `${studioName} teilt Ihnen mit: Ein Produkt, das Sie verwendet haben oder besitzen, wird zurückgerufen`,
      supplier: `${studioName} teilt Ihnen mit: Ein Produkt, das Sie uns geliefert haben, wird zurückgerufen`,
      authority: `${studioName} berichtet, wie das Studio mit dem Rückruf eines Produkts umgeht`,
    }[audience];
    const notice = [
      issuer === null ? null : `zurückrufende Stelle: ${issuer}`,
      issuedOn === null ? null : `Mitteilung vom ${dayOf(issuedOn)}`,
      reference === null ? null : `Aktenzeichen ${reference}`,
    ].filter((part) => part !== null);
    return `${who}${notice.length === 0 ? '' : ` (${notice.join(', ')})`}.`;
  },
  product: (lot) =>
    [
      `Produkt: ${productLabel(lot)} (Marke ${lot.makerName})`,
      lot.volumeMicrolitres === null
        ? null
        : `Größe ${String(lot.volumeMicrolitres / 1000).replace('.', ',')} ml`,
      lot.code === null ? 'Chargennummer nicht aufgedruckt oder nicht lesbar' : `Charge ${lot.code}`,
      lot.otherCodes.length === 0 ? null : `auch bekannt als ${list(lot.otherCodes)}`,
      lot.useBy === null
        ? null
        : `verwendbar bis ${lot.useByMonthOnly ? monthOf(lot.useBy) : dayOf(lot.useBy)}`,
      lot.manufacturedOn === null ? null : `hergestellt am ${dayOf(lot.manufacturedOn)}`,
      lot.gtins.length === 0 ? null : `GTIN ${list(lot.gtins)}`,
    ]
      .filter((part) => part !== null)
      .join('; ')
      .concat(
        lot.certainty === 'certain'
          ? '. Diese Charge wird zurückgerufen.'
          : '. Ob diese Charge zu den zurückgerufenen gehört, steht noch nicht fest; verhalten Sie sich so, als gehörte sie dazu.',
      ),
  lotName: (lot) =>
    `${productLabel(lot)}, ${lot.code === null ? 'Chargennummer unbekannt' : `Charge ${lot.code}`}`,
  whereTheNumberIs: (audience) =>
    audience === 'client'
      ? 'Die Chargennummer steht auf dem Etikett der Flasche oder Schachtel, die im Studio aufbewahrt wird.'
      : 'Die Chargennummer steht auf dem Etikett der Flasche, der Tube oder der Schachtel.',
  exposure: ({ day, visitKind, bodyPlace, through, certainty, because }, lot, studioName) => {
    const where = `Am ${dayOf(day)} im Studio ${studioName} (${germanTexts.visitKinds[visitKind]}, ${germanTexts.bodyPlaces[bodyPlace]})`;
    if (certainty === 'certain') {
      return `${where} wurde bei Ihnen verwendet: ${lot}${germanTexts.through[through]}.`;
    }
    const why = because.map((one) => germanTexts.because[one]);
    return `${where} wurde bei Ihnen möglicherweise verwendet: ${lot}${germanTexts.through[through]}. Das ist möglich, aber nicht sicher${
      why.length === 0 ? '' : `: ${why.join('; ')}`
    }.`;
  },
  artistPart: ({ sessions, firstDay, lastDay, containers }, lot, studioName) => {
    const used =
      sessions === 0 || firstDay === null || lastDay === null
        ? null
        : `Sie haben ${lot} im Studio ${studioName} ${between(firstDay, lastDay)} verwendet, in ${times(sessions, 'Sitzung', 'Sitzungen')}.`;
    const has =
      containers.length === 0
        ? null
        : `Von ${lot} haben Sie im Studio ${studioName}: Etikett ${list(containers)}.`;
    return (
      [used, has].filter((part) => part !== null).join(' ') ||
      `${lot} ist im Studio ${studioName}, in dem Sie arbeiten.`
    );
  },
  delivery: ({ day, reference, pieces }, lot, studioName) =>
    `Sie haben ${times(pieces, 'Stück', 'Stück')} von ${lot} an ${studioName} geliefert, eingegangen am ${dayOf(day)}${
      reference === null ? '' : `, ${reference}`
    }.`,
  figures: ({ clientsCertain, clientsPossible, clientsTold, firstDay, lastDay }, studioName) =>
    firstDay === null || lastDay === null
      ? `Im Studio ${studioName} wurde es, soweit verzeichnet, bei niemandem verwendet.`
      : `Im Studio ${studioName} wurde es ${between(firstDay, lastDay)} verwendet: sicher bei ${times(clientsCertain, 'Person', 'Personen')}, möglicherweise bei ${clientsPossible} weiteren. Bisher benachrichtigt: ${clientsTold}.`,
  hazard: (risk) =>
    risk === null
      ? 'Gefahr: Die vorliegende Mitteilung beschreibt sie nicht. Bis sie es tut, ist das Produkt als gefährlich anzusehen.'
      : `Gefahr, wie die Mitteilung sie beschreibt: ${risk}`,
  stop: (audience, studioName) =>
    ({
      client:
        'Was zu tun ist: Stopp. Lassen Sie dieses Produkt nicht mehr bei sich verwenden, und verwenden Sie nichts davon, falls Sie selbst etwas haben. Bewahren Sie diese Nachricht auf.',
      artist:
        'Was zu tun ist: Verwenden Sie dieses Produkt sofort nicht mehr und geben Sie nichts davon weiter. Legen Sie jede Flasche, Tube und Schachtel davon beiseite, ob versiegelt oder geöffnet, auch aus Reisekoffern und vom Übungsregal. Werfen Sie nichts weg. Geben Sie Kundinnen und Kunden keinen Rat zu ihrer Gesundheit; das Studio benachrichtigt sie.',
      supplier:
        'Was zu tun ist: Verkaufen und liefern Sie diese Chargen sofort nicht mehr. Teilen Sie uns mit, ob weitere Chargen betroffen sind und wie der Rest zurückzugeben oder zu vernichten ist. Wir verwenden sie nicht mehr und legen beiseite, was wir haben.',
      authority: `Was geschieht: ${studioName} verwendet diese Chargen sofort nicht mehr und legt beiseite, was übrig ist; es wird nach Anweisung zurückgegeben oder vernichtet. Teilen Sie uns mit, wenn mehr zu tun ist.`,
    })[audience],
  signs: (signs) =>
    `${
      signs.length === 0
        ? 'Beobachten Sie die Stelle, an der es verwendet wurde, und wie Sie sich fühlen.'
        : `Achten Sie auf diese Zeichen, welche die Mitteilung nennt: ${list(signs)}.`
    } Wenn Sie ${
      signs.length === 0 ? 'eine Veränderung' : 'eines davon oder eine andere Veränderung'
    } bemerken, gehen Sie zu einer Ärztin oder einem Arzt, und zeigen Sie dort diese Nachricht.`,
  remedy: (audience, remedy, issuer) => {
    const own =
      audience === 'client' && remedy === null
        ? ` Fragen Sie ${issuer === null ? 'uns' : `${issuer} oder uns`} danach: In der Europäischen Union sagt Artikel 37 der Verordnung (EU) 2023/988, was Ihnen kostenlos anzubieten ist.`
        : '';
    return remedy === null
      ? `Abhilfe: Die vorliegende Mitteilung nennt keine.${own}`
      : `Abhilfe, wie die Mitteilung sie nennt: ${remedy}`;
  },
  contact: (audience, studioName, contactPoint) => {
    const where = contactPoint === null ? studioName : `${studioName}, ${contactPoint}`;
    return {
      client: `Für weitere Auskunft, und um uns zu sagen, dass Sie dies erhalten haben: ${where}.`,
      artist: `Melden Sie noch heute zurück, was Sie davon haben und was nicht, und fragen Sie, was Sie wissen möchten: ${where}.`,
      supplier: `Antworten Sie, und sagen Sie uns, was Sie noch haben oder anderswohin geliefert haben: ${where}.`,
      authority: `Für weitere Auskunft und für Ihre Antwort: ${where}.`,
    }[audience];
  },
  share: (audience) =>
    ({
      client: 'Bitte geben Sie dies an alle weiter, die es sonst angehen kann.',
      artist: 'Sagen Sie es allen, denen Sie etwas davon geliehen oder gegeben haben.',
      supplier: 'Geben Sie dies an alle weiter, denen Sie diese Chargen sonst geliefert haben.',
      authority: 'Bitte geben Sie dies weiter, wo andere betroffen sind.',
    })[audience],
  visitKinds: {
    'patch test': 'Verträglichkeitstest',
    'first session': 'Erstbehandlung',
    'touch-up': 'Nachbehandlung',
    refresh: 'Auffrischung',
    correction: 'Korrektur',
    lightening: 'Aufhellung',
    training: 'Übung',
  },
  bodyPlaces: {
    brows: 'Brauen',
    'upper eyelids': 'obere Lider',
    'lower eyelids': 'untere Lider',
    lips: 'Lippen',
    areola: 'Warzenhof',
    scalp: 'Kopfhaut',
    other: 'eine andere Stelle des Körpers',
  },
  through: {
    direct: '',
    mix: ', gemischt mit anderem',
    'house blend': ', in einer Mischung des Studios',
  },
  because: {
    'lot undecided': 'ob diese Charge zu den zurückgerufenen gehört, steht noch nicht fest',
    'lot picked from a list':
      'die Charge wurde aus einer Liste gewählt und nicht vom Etikett gelesen, sodass es auch eine andere gewesen sein kann',
    'another open lot that day':
      'verzeichnet ist eine andere Charge, sie wurde aber aus einer Liste gewählt, und diese war an jenem Tag im Studio in Gebrauch',
  },
};
