import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyPlaces, visitKinds } from '../../sessions/vocabulary.js';
import { exposureReasons } from '../exposures/exposure-certainty.js';
import { contactAudiences } from '../vocabulary.js';
import { withoutAdvice } from './beyond-cautions.js';
import {
  type ClientExposure,
  type MessageFacts,
  type MessageLanguage,
  type MessageLot,
  type MessageRecall,
  messageLanguages,
} from './message-facts.js';
import { messageElements, type PreparedMessage, preparedMessage } from './prepared-message.js';
import { softeningWords } from './softening-words.js';

const recall: MessageRecall = {
  studioName: 'Atelier Linde',
  contactPoint: 'telephone 0800 000 000, recalls@linde.example',
  issuer: 'Halden Ink',
  reference: 'HI-2026-04',
  issuedOn: '2026-03-02',
  risk: 'The pigment may hold germs. Redness, swelling or fever can follow.',
  remedy: 'The price is paid back.',
};
const umber: MessageLot = {
  lotId: 'lot-umber',
  makerName: 'Halden',
  productName: 'Ink',
  shade: 'Umber',
  volumeMicrolitres: 15_000,
  gtins: ['09506000134352'],
  code: 'U-1042',
  otherCodes: ['U-1O42'],
  useBy: '2027-10-31',
  useByMonthOnly: true,
  manufacturedOn: '2025-09-14',
  certainty: 'certain',
};
const sand: MessageLot = {
  ...umber,
  lotId: 'lot-sand',
  shade: 'Sand',
  code: 'S-77',
  otherCodes: [],
  gtins: [],
  useBy: '2027-02-05',
  useByMonthOnly: false,
  certainty: 'possible',
};
const exposure: ClientExposure = {
  lotId: umber.lotId,
  day: '2026-01-07',
  visitKind: 'first session',
  bodyPlace: 'brows',
  through: 'direct',
  certainty: 'certain',
  because: [],
};

function factsFor(
  audience: MessageFacts['audience'],
  language: MessageLanguage,
  given: Partial<{ recall: MessageRecall; lots: MessageLot[] }> = {},
): MessageFacts {
  const common = { language, recall, lots: [umber], ...given };
  switch (audience) {
    case 'client':
      return { ...common, audience, exposures: common.lots.map(({ lotId }) => ({ ...exposure, lotId })) };
    case 'artist':
      return {
        ...{ ...common, audience },
        parts: common.lots.map(({ lotId }) => ({
          ...{ lotId, sessions: 3, firstDay: '2026-01-07', lastDay: '2026-02-01', containers: ['AB12'] },
        })),
      };
    case 'supplier':
      return {
        ...{ ...common, audience },
        deliveries: common.lots.map(({ lotId }) => ({
          ...{ lotId, day: '2025-12-01', reference: 'note 12', pieces: 4 },
        })),
      };
    case 'authority':
      return {
        ...{ ...common, audience },
        figures: {
          ...{ clientsCertain: 3, clientsPossible: 1, clientsTold: 2 },
          ...{ firstDay: '2026-01-07', lastDay: '2026-02-01' },
        },
      };
  }
}

const everyMessage = contactAudiences.flatMap((audience) =>
  messageLanguages.map((language) => ({ audience, language })),
);
const textOf = ({ heading, body }: PreparedMessage) =>
  [heading.text, ...body.map(({ text }) => text)].join('\n');

/** Words by which advice on health is given; none stands in any of our sentences. */
const wordsOfAdvice =
  /antibioti|antihistamin|cortison|steroid|ointment|\bcream|painkiller|ibuprofen|paracetamol|aspirin|disinfect|desinfi|\bcool\b|kühl|\brinse|spül|harmless|harmlos|unbedenklich|\bworry|sorge|wait and see|abwarten|\blaser|diagnos|dosage|dosis|\bmg\b|vaccin|impf|salbe|creme|schmerzmittel|medik|medication|medicine|therap|allerg(?:y|ie)test/iu;

describe.each(everyMessage)('a message to the $audience in $language', ({ audience, language }) => {
  const message = preparedMessage(factsFor(audience, language));
  const text = textOf(message);

  // [P] Regulation (EU) 2023/988, Art. 36(2); 21 CFR 7.49 [P], (c)(1)(iii)-(v) [M]: see the elements.
  it('answers every element that the law asks', () => {
    const answered = new Set([message.heading, ...message.body].flatMap(({ elements }) => elements));
    expect(messageElements.map(({ code }) => code).filter((code) => !answered.has(code as never))).toEqual(
      [],
    );
    expect([message.heading, ...message.body].every((paragraph) => paragraph.text.trim() !== '')).toBe(true);
  });

  it('says what each element asks, and not only that it does', () => {
    const saying = (element: string) =>
      [message.heading, ...message.body]
        .filter(({ elements }) => elements.includes(element as never))
        .map((paragraph) => paragraph.text)
        .join(' ');
    const says: [string, RegExp][] = [
      ['art-36-2-a', /^(Product safety recall|Produktsicherheitsrückruf)$/],
      ['art-36-2-b-i', /Halden Ink Umber.*(brand|Marke) Halden/],
      ['art-36-2-b-ii', /(lot|Charge) U-1042.*(label|Etikett)/],
      ['art-36-2-b-iii', /(2025|2026).*Atelier Linde|Atelier Linde.*(2025|2026)/],
      ['art-36-2-c', /The pigment may hold germs/],
      ['art-36-2-d', /stop|Stopp|sofort nicht mehr|at once/],
      ['art-36-2-e', /The price is paid back/],
      ['art-36-2-f', /0800 000 000/],
      ['art-36-2-g', /pass this on|geben Sie dies|Tell everyone|Sagen Sie es allen/i],
      ['7-49-a-1', /recall|zurückgerufen|Rückruf/],
      ['7-49-a-2', /stop|at once|Stopp|sofort nicht mehr/],
      ['7-49-a-3', /pass this on|geben Sie dies|Tell everyone|Sagen Sie es allen/i],
      ['7-49-a-4', /What to do|What is done|Was zu tun ist|Was geschieht/],
      ['7-49-c-1-ii', /15 ml.*U-1042.*U-1O42.*2027.*09506000134352/],
      ['7-49-c-1-iii', /germs/],
      ['7-49-c-1-iv', /[Dd]o not|stop|beiseite|Stopp|sofort nicht/],
      ['7-49-c-1-v', /0800 000 000/],
    ];
    expect(says.map(([element]) => element)).toEqual(messageElements.map(({ code }) => code));
    expect(
      says.filter(([element, pattern]) => !pattern.test(saying(element))).map(([element]) => element),
    ).toEqual([]);
  });

  it('holds no word that makes the hazard look smaller', () => {
    expect(softeningWords(text)).toEqual([]);
  });

  it('gives no advice on health beyond the cautions', () => {
    expect(wordsOfAdvice.exec(text)?.[0] ?? null).toBeNull();
    expect(withoutAdvice(text.replaceAll('\n', ' ')).leftOut).toEqual([]);
  });

  it('keeps all that when the notice softens, reassures and advises', () => {
    const notice = {
      ...recall,
      risk: 'Halden is voluntarily recalling the pigment as a precaution. In rare cases it may hold germs. No injuries have been reported. Patients should take antibiotics. There is no cause for concern. Freiwillig und vorsorglich zurückgerufen, in seltenen Fällen. Nehmen Sie ein Antihistaminikum.',
      remedy: 'The price is paid back at our discretion. Rinse the place with water.',
    };
    const hard = preparedMessage(factsFor(audience, language, { recall: notice }));
    const hardText = textOf(hard);
    expect(softeningWords(hardText)).toEqual([]);
    expect(wordsOfAdvice.exec(hardText)?.[0] ?? null).toBeNull();
    expect(hardText).toMatch(/it may hold germs|It may hold germs/);
    expect(hardText).toContain('The price is paid back');
    const codes = hard.remarks.map(({ code }) => code);
    expect(codes).toContain('softening words left out');
    expect(codes).toContain('advice left out');
  });

  it('says that the notice names no hazard and no remedy, and asks for them', () => {
    const silent = preparedMessage(
      factsFor(audience, language, { recall: { ...recall, risk: null, remedy: null, contactPoint: null } }),
    );
    expect(silent.remarks.map(({ code }) => code)).toEqual([
      'no contact point',
      'no hazard named',
      'no remedy named',
    ]);
    const answered = new Set([silent.heading, ...silent.body].flatMap(({ elements }) => elements));
    expect(messageElements.every(({ code }) => answered.has(code as never))).toBe(true);
  });

  // 21 CFR 7.49(c)(1)(i) [P]: be brief and to the point.
  it('fits on a sheet', () => {
    expect(text.split(/\s+/).length).toBeLessThan(300);
  });

  it('sends people with signs to a doctor, and only clients', () => {
    expect(/doctor|Ärztin/.test(text)).toBe(audience === 'client');
  });
});

describe('what a message to a client says', () => {
  const arbitraryLot = fc.record({ lotId: fc.uuid(), shade: fc.constantFrom('Umber', 'Sand', 'Rose', null) });
  const arbitraryExposures = fc
    .uniqueArray(arbitraryLot, { minLength: 1, maxLength: 5, selector: ({ lotId }) => lotId })
    .chain((lots) =>
      fc.record({
        lots: fc.constant(
          lots.map(
            ({ lotId, shade }, index): MessageLot => ({
              ...{ ...umber, lotId, shade, code: `LOT${lotId}`, otherCodes: [], gtins: [] },
              certainty: index % 2 === 0 ? 'certain' : 'possible',
            }),
          ),
        ),
        exposures: fc.array(
          fc.record({
            lotId: fc.constantFrom(...lots.map(({ lotId }) => lotId)),
            day: fc
              .date({ min: new Date('2016-01-01'), max: new Date('2026-12-31'), noInvalidDate: true })
              .map((date) => date.toISOString().slice(0, 10)),
            visitKind: fc.constantFrom(...visitKinds),
            bodyPlace: fc.constantFrom(...bodyPlaces),
            through: fc.constantFrom('direct' as const, 'mix' as const, 'house blend' as const),
            because: fc.subarray([...exposureReasons]),
          }),
          { minLength: 1, maxLength: 8 },
        ),
      }),
    );

  it('names exactly the lots of that client, and says for certain only what is certain', () => {
    fc.assert(
      fc.property(
        arbitraryExposures,
        arbitraryExposures,
        fc.constantFrom(...messageLanguages),
        (own, others, language) => {
          const exposures = own.exposures.map(
            (one): ClientExposure => ({
              ...one,
              certainty: one.because.length === 0 ? 'certain' : 'possible',
            }),
          );
          const touched = new Set(exposures.map(({ lotId }) => lotId));
          const lots = own.lots.filter(({ lotId }) => touched.has(lotId));
          const message = preparedMessage({ audience: 'client', language, recall, lots, exposures });
          const text = textOf(message);
          for (const { code } of lots) expect(text).toContain(code);
          for (const { code } of own.lots.filter(({ lotId }) => !touched.has(lotId))) {
            expect(text).not.toContain(code);
          }
          for (const { code } of others.lots) expect(text).not.toContain(code);
          const told = message.body.filter(({ elements }) => elements.includes('art-36-2-b-iii'));
          expect(told.length).toBe(exposures.length);
          exposures.forEach(({ certainty, day, lotId }, index) => {
            const said = told[index]?.text ?? '';
            expect(said).toContain(lots.find((lot) => lot.lotId === lotId)?.code ?? '');
            expect(said).toContain(day.slice(0, 4));
            expect(/\bmay have been\b|möglicherweise/.test(said)).toBe(certainty === 'possible');
          });
          const certain = exposures.some(({ certainty }) => certainty === 'certain');
          expect(/\bmay have been\b|möglicherweise/.test(message.body[0]?.text ?? '')).toBe(!certain);
        },
      ),
    );
  });

  it('tells day, visit, place on the body and the way in words', () => {
    const message = (language: MessageLanguage, given: Partial<ClientExposure>) =>
      preparedMessage({
        ...{ audience: 'client', language, recall, lots: [umber] },
        exposures: [{ ...exposure, ...given }],
      }).body.find(({ elements }) => elements.includes('art-36-2-b-iii'))?.text;
    expect(message('en', { through: 'house blend' })).toBe(
      'On 7 January 2026 at Atelier Linde (first session, brows), Halden Ink Umber, lot U-1042 was used on you, in a blend made at the studio.',
    );
    expect(message('de', { through: 'mix', visitKind: 'patch test' })).toBe(
      'Am 7. Januar 2026 im Studio Atelier Linde (Verträglichkeitstest, Brauen) wurde bei Ihnen verwendet: Halden Ink Umber, Charge U-1042, gemischt mit anderem.',
    );
    expect(message('en', { certainty: 'possible', because: ['lot picked from a list'] })).toContain(
      'may have been used on you. This is possible and not certain: the lot was picked from a list',
    );
  });

  it('names the signs that the notice names, else none', () => {
    const signs = (risk: string | null, language: MessageLanguage = 'en') =>
      preparedMessage(factsFor('client', language, { recall: { ...recall, risk } })).body.find(({ text }) =>
        /doctor|Ärztin/.test(text),
      )?.text;
    expect(signs('Redness, swelling or fever can follow.')).toBe(
      'Watch for these signs, which the notice names: redness, swelling and fever. If you notice one of them or any other change, see a doctor, and show them this message.',
    );
    expect(signs('Redness, swelling or fever can follow.', 'de')).toContain('Rötung, Schwellung und Fieber');
    expect(signs('It holds germs.')).toBe(
      'Watch the place where it was used, and how you feel. If you notice any change, see a doctor, and show them this message.',
    );
    expect(signs(null)).toContain('see a doctor, and show them this message.');
  });

  it('asks to have the words of the notice translated where they are in another language', () => {
    const remarks = (language: MessageLanguage) =>
      preparedMessage(
        factsFor('client', language, {
          recall: {
            ...recall,
            risk: 'Das Pigment ist mit Keimen belastet und kann die Haut reizen.',
            remedy: null,
          },
        }),
      ).remarks.map(({ code }) => code);
    expect(remarks('en')).toContain('words in another language');
    expect(remarks('de')).not.toContain('words in another language');
  });

  it('says that a lot without a code has none, and asks to act as if an undecided one were meant', () => {
    const text = textOf(preparedMessage(factsFor('client', 'en', { lots: [{ ...sand, code: null }] })));
    expect(text).toContain('lot number not printed or not readable');
    expect(text).toContain('not settled yet; act as if it were');
  });
});
