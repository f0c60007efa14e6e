import { Transform } from 'class-transformer';
import { IsIn, IsInt, Max, Min } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { PlainText } from '../../platform/plain-text.js';
import { EventDto, PageDto } from '../../platform/request.dto.js';
import { type MessageLanguage, messageLanguages } from '../messages/message-facts.js';
import {
  type ContactAudience,
  type ContactChannel,
  type ContactOutcome,
  contactAudiences,
  contactChannels,
  contactOutcomes,
} from '../vocabulary.js';

const longestCompany = 200;

export class RecipientPageDto extends PageDto {
  /** Left out: clients. */
  @MayBeLeftOut() @IsIn(contactAudiences) audience?: ContactAudience;
  /** True: only those whom nobody has reached yet, and who neither refused nor are unreachable. */
  @MayBeLeftOut()
  @Transform(({ value }) => (value === 'true' ? true : value === 'false' ? false : value))
  @IsIn([true, false], { message: 'outstanding must be true or false' })
  outstanding?: boolean;
}

/** Whom a message is prepared for: the one id or name that goes with the audience. */
export class PrepareMessageDto {
  /** Left out: a client. */
  @MayBeLeftOut() @IsIn(contactAudiences) audience?: ContactAudience;
  @MayBeLeftOut() @NamedId() clientId?: string;
  @MayBeLeftOut() @NamedId() artistId?: string;
  /** A supplier or an authority. */
  @MayBeLeftOut() @PlainText(longestCompany) company?: string;
  /** Left out: English. */
  @MayBeLeftOut() @IsIn(messageLanguages) language?: MessageLanguage;
}

export class RecordContactDto extends EventDto {
  @IsIn(contactAudiences) audience: ContactAudience;
  @MayBeLeftOut() @NamedId() clientId?: string;
  @MayBeLeftOut() @NamedId() artistId?: string;
  /** A supplier or an authority. */
  @MayBeLeftOut() @PlainText(longestCompany) company?: string;
  @IsIn(contactChannels) channel: ContactChannel;
  @IsIn(contactOutcomes) outcome: ContactOutcome;
  /** What was said. Of a client it is kept sealed. */
  @MayBeLeftOut() @PlainText(1_000) note?: string;
}

export class ContactPageDto extends PageDto {
  /** Left out: all. */
  @MayBeLeftOut() @IsIn(contactAudiences) audience?: ContactAudience;
  @MayBeLeftOut() @NamedId() clientId?: string;
}

export class EffectivenessDto {
  /** Per cent of those to be told that level B was agreed to ask for, 11 to 99; left out: nothing was agreed. */
  @MayBeLeftOut()
  @Transform(({ value }) => (typeof value === 'string' && /^\d+$/.test(value) ? Number(value) : value))
  @IsInt()
  @Min(11)
  @Max(99)
  agreedPercent?: number;
}
