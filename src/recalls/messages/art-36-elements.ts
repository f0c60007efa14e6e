import type { LegalElement } from './legal-element.js';

/**
 * What Regulation (EU) 2023/988 asks of a recall notice to consumers. [P] Art. 36(2) was read whole, in the German wording
 * of the Official Journal as gesetze.legal reprints it.
 */
export const art36Elements = [
  {
    code: 'art-36-2-a',
    asks: 'a heading that consists of the words "Product safety recall"',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(a)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-b-i',
    asks: 'the picture, name and brand of the product',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(b)(i)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-b-ii',
    asks: 'its identification numbers, such as the batch, and where they are to be found',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(b)(ii)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-b-iii',
    asks: 'when, where and by whom it was handed over: here, when and where it was used, or delivered',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(b)(iii)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-c',
    asks: 'the hazard, without anything that makes it look smaller',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(c)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-d',
    asks: 'what to do, and to stop using the product at once',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(d)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-e',
    asks: 'the remedies that are offered',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(e)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-f',
    asks: 'a free telephone number or an online service for more information',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(f)',
    howSure: 'P',
  },
  {
    code: 'art-36-2-g',
    asks: 'to pass the information on where that is of use',
    source: 'Regulation (EU) 2023/988, Art. 36(2)(g)',
    howSure: 'P',
  },
] as const satisfies readonly LegalElement[];
