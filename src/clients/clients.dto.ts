import { applyDecorators } from '@nestjs/common';
import { ApiProperty } from '@nestjs/swagger';
import { IsOptional, IsString, Length, Matches } from 'class-validator';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { PlainText } from '../platform/plain-text.js';
import { WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';

const maximumNameLength = 200;
const maximumContactLength = 200;
const maximumNoteLength = 2_000;
/** Several lines, without characters that cannot be seen. */
const visibleLines = /^(?:[^\p{Cc}\p{Cs}]|[\n\t])*$/u;

function Note(): PropertyDecorator {
  return applyDecorators(
    IsOptional(),
    IsString(),
    Length(1, maximumNoteLength),
    ApiProperty({ minLength: 1, maxLength: maximumNoteLength }),
    Matches(visibleLines, { message: '$property must not hold control characters' }),
  );
}

/** What is known of a person when they become a client. */
export class NewClientDto {
  @PlainText(maximumNameLength) name: string;
  /** How to reach them: a telephone number or a mail address. */
  @IsOptional() @PlainText(maximumContactLength) contact?: string | null;
  @Note() note?: string | null;
}

export class AddClientDto extends NewClientDto {
  /** Made by the client of the API, a UUID (version 7 preferred). Sent again with the same content it gets the first answer. */
  @NamedId() id: string;
}

export class ChangeClientDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @PlainText(maximumNameLength) name?: string;
  /** Null takes it away. */
  @IsOptional() @PlainText(maximumContactLength) contact?: string | null;
  /** Null takes it away. */
  @Note() note?: string | null;
}

/** Sent in the body, so that no name or contact ever stands in an address or a log. */
export class SearchClientsDto {
  /** The whole name, contact or reference; capitals and spaces do not matter. */
  @PlainText(maximumNameLength) text: string;
}
