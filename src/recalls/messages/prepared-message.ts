import { art36Elements } from './art-36-elements.js';
import { withoutAdvice } from './beyond-cautions.js';
import { cfr749Elements } from './cfr-7-49-elements.js';
import type { LegalElement } from './legal-element.js';
import { likelyLanguage } from './likely-language.js';
import type { MessageFacts } from './message-facts.js';
import type { MessageTexts } from './message-texts.js';
import { namedSigns } from './named-signs.js';
import { unsoftened } from './softening-words.js';
import { germanTexts } from './texts-de.js';
import { englishTexts } from './texts-en.js';

export type MessageElementCode = (typeof art36Elements | typeof cfr749Elements)[number]['code'];

export type MessageRemarkCode =
  | 'no contact point'
  | 'no hazard named'
  | 'no remedy named'
  | 'softening words left out'
  | 'advice left out'
  | 'words in another language'
  | 'no picture'
  | 'erased'
  | 'drill';

export interface MessageParagraph {
  text: string;
  elements: MessageElementCode[];
}

export interface MessageRemark {
  code: MessageRemarkCode;
  text: string;
  words: string[];
}

export interface PreparedMessage {
  heading: MessageParagraph;
  body: MessageParagraph[];
  remarks: MessageRemark[];
}

/** What every message answers, whoever it is for. */
export const messageElements: readonly LegalElement[] = [...art36Elements, ...cfr749Elements];

const textsOf: Record<MessageFacts['language'], MessageTexts> = { en: englishTexts, de: germanTexts };

/**
 * Prepares a message about a recall, for one recipient. It names their lots and no others, says for certain only what is
 * certain, and gives no advice on health beyond "stop, watch for these signs, see a doctor, and show them this". Words of
 * the notice that make the hazard look smaller, or that advise more, are left out, and a remark says so.
 */
export function preparedMessage(facts: MessageFacts): PreparedMessage {
  const { audience, recall, lots, language } = facts;
  const texts = textsOf[language];
  const { studioName, issuer, contactPoint } = recall;
  const risk = noticeWords(recall.risk);
  const remedy = noticeWords(recall.remedy);
  const certain =
    facts.audience === 'client'
      ? facts.exposures.some(({ certainty }) => certainty === 'certain')
      : lots.some(({ certainty }) => certainty === 'certain');
  const signs = audience === 'client' ? texts.signs(namedSigns(risk.text ?? '', language)) : null;
  const body: MessageParagraph[] = [
    { text: texts.opening(audience, recall, certain), elements: ['7-49-a-1'] },
    ...lots.map(
      (lot): MessageParagraph => ({
        text: texts.product(lot),
        elements: ['art-36-2-b-i', 'art-36-2-b-ii', '7-49-c-1-ii'],
      }),
    ),
    { text: texts.whereTheNumberIs(audience), elements: ['art-36-2-b-ii'] },
    ...happened(facts, texts).map((text): MessageParagraph => ({ text, elements: ['art-36-2-b-iii'] })),
    { text: texts.hazard(risk.text), elements: ['art-36-2-c', '7-49-c-1-iii'] },
    {
      text: texts.stop(audience, studioName),
      elements: ['art-36-2-d', '7-49-a-2', '7-49-a-4', '7-49-c-1-iv'],
    },
    ...(signs === null ? [] : [{ text: signs, elements: ['art-36-2-d' as const] }]),
    { text: texts.remedy(audience, remedy.text, issuer), elements: ['art-36-2-e'] },
    { text: texts.contact(audience, studioName, contactPoint), elements: ['art-36-2-f', '7-49-c-1-v'] },
    { text: texts.share(audience), elements: ['art-36-2-g', '7-49-a-3'] },
  ];
  return {
    heading: { text: texts.heading, elements: ['art-36-2-a'] },
    body,
    remarks: remarksOn(facts, risk, remedy),
  };
}

/** When and where it was used, or delivered: nothing but what concerns the recipient. */
function happened(facts: MessageFacts, texts: MessageTexts): string[] {
  const { studioName } = facts.recall;
  const names = new Map(facts.lots.map((lot) => [lot.lotId, texts.lotName(lot)]));
  const of = <Fact extends { lotId: string }>(
    given: readonly Fact[],
    say: (fact: Fact, lot: string) => string,
  ) =>
    given.flatMap((fact) => {
      const lot = names.get(fact.lotId);
      return lot === undefined ? [] : [say(fact, lot)];
    });
  switch (facts.audience) {
    case 'client':
      return of(facts.exposures, (fact, lot) => texts.exposure(fact, lot, studioName));
    case 'artist':
      return of(facts.parts, (fact, lot) => texts.artistPart(fact, lot, studioName));
    case 'supplier':
      return of(facts.deliveries, (fact, lot) => texts.delivery(fact, lot, studioName));
    case 'authority':
      return [texts.figures(facts.figures, studioName)];
  }
}

interface NoticeWords {
  /** Null: nothing is said, or nothing is left of it. */
  text: string | null;
  softening: string[];
  advice: string[];
}

function noticeWords(given: string | null): NoticeWords {
  if (given === null) return { text: null, softening: [], advice: [] };
  const hard = unsoftened(given);
  const cautious = withoutAdvice(hard.text);
  return { text: cautious.text || null, softening: hard.leftOut, advice: cautious.leftOut };
}

function remarksOn(facts: MessageFacts, risk: NoticeWords, remedy: NoticeWords): MessageRemark[] {
  const { recall, language } = facts;
  const remarks: MessageRemark[] = [];
  const remark = (code: MessageRemarkCode, text: string, words: string[] = []) =>
    remarks.push({ code, text, words });
  if (recall.contactPoint === null) {
    remark(
      'no contact point',
      'The studio has no contact point in its settings, so the message names only the studio. The law asks for a free telephone number or an online service: set one, or write it on the message.',
    );
  }
  if (risk.text === null) {
    remark(
      'no hazard named',
      'The recall says nothing of the hazard. Amend it with the words of the notice.',
    );
  }
  if (remedy.text === null) {
    remark('no remedy named', 'The recall names no remedy. Amend it with the words of the notice.');
  }
  const softening = [...risk.softening, ...remedy.softening];
  if (softening.length > 0) {
    remark(
      'softening words left out',
      'Words of the notice that make the hazard look smaller were left out, as Regulation (EU) 2023/988, Art. 36(2)(c), asks.',
      softening,
    );
  }
  const advice = [...risk.advice, ...remedy.advice];
  if (advice.length > 0) {
    remark(
      'advice left out',
      'Sentences of the notice that give advice on health, or reassure, were left out: that is a doctor’s part.',
      advice,
    );
  }
  const quoted = [risk.text, remedy.text].filter((text) => text !== null);
  const foreign = quoted.filter((text) => (likelyLanguage(text) ?? language) !== language);
  if (foreign.length > 0) {
    remark(
      'words in another language',
      'What the message takes from the notice seems to be in another language. Have it translated where the reader needs it.',
      foreign,
    );
  }
  return remarks;
}
