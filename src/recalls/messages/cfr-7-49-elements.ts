import type { LegalElement } from './legal-element.js';

/**
 * What 21 CFR 7.49 asks of a recall communication. (a) and (c)(1)(i)–(ii) were read in the Code of Federal Regulations as
 * published by the Government Printing Office [P]; (c)(1)(iii)–(v) from memory [M], against the trade notes, which say the
 * same.
 */
export const cfr749Elements = [
  {
    code: '7-49-a-1',
    asks: 'that the product is subject to a recall',
    source: '21 CFR 7.49(a)(1)',
    howSure: 'P',
  },
  {
    code: '7-49-a-2',
    asks: 'that use and distribution of what is left stop at once',
    source: '21 CFR 7.49(a)(2)',
    howSure: 'P',
  },
  {
    code: '7-49-a-3',
    asks: 'where appropriate, to tell those who received it in turn',
    source: '21 CFR 7.49(a)(3)',
    howSure: 'P',
  },
  {
    code: '7-49-a-4',
    asks: 'what to do with the product',
    source: '21 CFR 7.49(a)(4)',
    howSure: 'P',
  },
  {
    code: '7-49-c-1-ii',
    asks: 'product, size, lot numbers, codes and whatever else tells it apart at once',
    source: '21 CFR 7.49(c)(1)(ii)',
    howSure: 'P',
  },
  {
    code: '7-49-c-1-iii',
    asks: 'the reason for the recall and the hazard, in few words',
    source: '21 CFR 7.49(c)(1)(iii)',
    howSure: 'M',
  },
  {
    code: '7-49-c-1-iv',
    asks: 'instructions on what should be done',
    source: '21 CFR 7.49(c)(1)(iv)',
    howSure: 'M',
  },
  {
    code: '7-49-c-1-v',
    asks: 'a ready means to report back',
    source: '21 CFR 7.49(c)(1)(v)',
    howSure: 'M',
  },
] as const satisfies readonly LegalElement[];
