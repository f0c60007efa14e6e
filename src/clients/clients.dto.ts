import { IsInt, IsOptional, IsString, Length, Matches, Min, ValidateIf } from 'class-validator';
import { WriteDto } from '../platform/request.dto.js';

const notBlank = /\S/;
export const maximumClientNameLength = 200;
export const maximumContactLength = 200;
export const maximumClientNoteLength = 2_000;

/** What is known of a person when they become a client. */
export class NewClientDto {
  @IsString()
  @Length(1, maximumClientNameLength)
  @Matches(notBlank, { message: 'name must hold more than spaces' })
  name: string;

  /** How to reach them: a telephone number or a mail address. */
  @IsOptional() @IsString() @Length(1, maximumContactLength) contact?: string | null;
  @IsOptional() @IsString() @Length(1, maximumClientNoteLength) note?: string | null;
}

export class AddClientDto extends WriteDto {
  @IsString()
  @Length(1, maximumClientNameLength)
  @Matches(notBlank, { message: 'name must hold more than spaces' })
  name: string;

  /** How to reach them: a telephone number or a mail address. */
  @IsOptional() @IsString() @Length(1, maximumContactLength) contact?: string | null;
  @IsOptional() @IsString() @Length(1, maximumClientNoteLength) note?: string | null;
}

export class ChangeClientDto extends WriteDto {
  /** The version this change was made from. */
  @IsInt() @Min(1) version: number;

  @ValidateIf((_, value) => value !== undefined)
  @IsString()
  @Length(1, maximumClientNameLength)
  @Matches(notBlank, { message: 'name must hold more than spaces' })
  name?: string;

  /** Null takes it away. */
  @IsOptional() @IsString() @Length(1, maximumContactLength) contact?: string | null;
  /** Null takes it away. */
  @IsOptional() @IsString() @Length(1, maximumClientNoteLength) note?: string | null;
}

/** Sent in the body, so that no name or contact ever stands in an address or a log. */
export class SearchClientsDto {
  /** The whole name, contact or reference; capitals and spaces do not matter. */
  @IsString()
  @Length(1, maximumClientNameLength)
  @Matches(notBlank, { message: 'text must hold more than spaces' })
  text: string;
}
