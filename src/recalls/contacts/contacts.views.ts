import type { HowSure } from '../messages/legal-element.js';
import type { MessageAudience, MessageLanguage } from '../messages/message-facts.js';
import type { MessageRemarkCode } from '../messages/prepared-message.js';
import type { ContactAudience, ContactChannel, ContactOutcome } from '../vocabulary.js';
import type { ContactStanding } from './contact-standing.js';

/** How many of an audience are to be told, and how it stands with them. */
export class AudienceTotalsView {
  toTell: number;
  notTried: number;
  noAnswer: number;
  messageLeft: number;
  reached: number;
  refused: number;
  unreachable: number;
  /** Clients who were erased before they were told: they can be told no more. */
  erased: number;
  /** Those who are still to be tried: neither reached, nor refused, nor unreachable, nor erased. */
  outstanding: number;
}

/** Somebody who is to be told. */
export class RecipientView {
  /** Of the client, the person or the supplier; of a company that was only named: of the first attempt. */
  id: string;
  audience: ContactAudience;
  clientId: string | null;
  clientReference: string | null;
  /** Null also for those who are not shown it, and after an erasure. */
  clientName: string | null;
  clientContact: string | null;
  /** The client was erased and can be told no more, unless they come by themselves. */
  erased: boolean;
  artistId: string | null;
  company: string | null;
  /** Of a client: whether what touched them is certainly among what is recalled. */
  certainty: 'certain' | 'possible' | null;
  standing: ContactStanding;
  /** Told before, while a lot that touched them came to the recall only afterwards: to be told again. */
  toldEarlier: boolean;
  attempts: number;
  /** When the last attempt was made. */
  lastAt: string | null;
}

export class RecipientPageView {
  totals: AudienceTotalsView;
  items: RecipientView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** An attempt to tell somebody. */
export class ContactView {
  id: string;
  audience: ContactAudience;
  clientId: string | null;
  clientReference: string | null;
  artistId: string | null;
  company: string | null;
  channel: ContactChannel;
  outcome: ContactOutcome;
  /** Of a client: null for those who are not shown it, and after an erasure. */
  note: string | null;
  occurredAt: string;
  recordedAt: string;
  personId: string | null;
}

export class ContactPageView {
  items: ContactView[];
  /** Give it as `after` for the next page; null: this is the last. */
  next: string | null;
}

/** An attempt as it was recorded. */
export class RecordedContactView {
  id: string;
  audience: ContactAudience;
  outcome: ContactOutcome;
  occurredAt: string;
  recordedAt: string;
}

/** What the law asks a message to say. */
export class LegalElementView {
  /** Such as `art-36-2-c`. */
  code: string;
  /** What is asked, in few words. */
  asks: string;
  /** Such as `Regulation (EU) 2023/988, Art. 36(2)(c)`. */
  source: string;
  /** P: read in the primary text, S: in a secondary source, M: from memory. */
  howSure: HowSure;
}

export class MessageParagraphView {
  text: string;
  /** Codes of the elements it answers. */
  elements: string[];
}

/** Something the studio should see to before it passes the message on. */
export class MessageRemarkView {
  code: MessageRemarkCode;
  /** In English. */
  text: string;
  /** What it is about, such as words of the notice that were left out. */
  words: string[];
}

/** A lot the message names. */
export class MessageLotView {
  lotId: string;
  label: string;
  code: string | null;
  certainty: 'certain' | 'possible';
}

/** A message as it may be printed, copied or read out. Nothing is sent. */
export class PreparedMessageView {
  audience: MessageAudience;
  language: MessageLanguage;
  heading: string;
  /** Codes of the elements that the heading answers. */
  headingElements: string[];
  /** Whom it is for; null: it is not known, or may not be shown. */
  recipient: string | null;
  /** How a client can be reached, as they told the studio. */
  recipientContact: string | null;
  body: MessageParagraphView[];
  elements: LegalElementView[];
  lots: MessageLotView[];
  /** Photos of these lots that were taken for this recall, the latest first; at most three. */
  photoIds: string[];
  remarks: MessageRemarkView[];
  /** True: of a drill, not to be passed on. */
  drill: boolean;
}

/** How many of an audience were told. */
export class AudienceEffectivenessView extends AudienceTotalsView {
  audience: ContactAudience;
  /** Reached or refused: they know, or did not want to. */
  told: number;
  /** Of those to be told, 0 to 100 with one decimal; null: there is nobody to tell. */
  toldPercent: number | null;
}

/** A level of effectiveness checks, and whether it is met. */
export class EffectivenessLevelView {
  level: 'A' | 'B' | 'C' | 'D' | 'E';
  /** Of those to be told; null: agreed case by case, and not told here. */
  percent: number | null;
  /** How many are to be checked, rounded up; null where there is no per cent. */
  toCheck: number | null;
  met: boolean | null;
  /** How sure the numbers are: see `LegalElementView`. */
  howSure: HowSure;
}

export class EffectivenessView {
  audiences: AudienceEffectivenessView[];
  /** Clients, artists and suppliers together; an authority is informed and not checked. */
  toTell: number;
  told: number;
  toldPercent: number | null;
  /** From A to E, judged on those together. */
  levels: EffectivenessLevelView[];
  /** The highest level that is met; null: none. */
  met: 'A' | 'B' | 'C' | 'D' | 'E' | null;
  /** Where the levels come from. */
  source: string;
  /** Such as "not verified against the official text"; null: verified. */
  caveat: string | null;
}
