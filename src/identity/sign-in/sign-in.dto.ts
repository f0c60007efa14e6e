import { IsString, IsTimeZone, Length } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { NamedId } from '../../platform/named-id.js';
import { PlainText } from '../../platform/plain-text.js';
import { mostCharacters } from './passwords.service.js';

const longestSecret = 100;
const longestName = 100;

export class SignInDto {
  @PlainText(longestName) signInName: string;
  @IsString() @Length(1, mostCharacters) password: string;
}

/** What somebody chooses to sign in with. */
export class NewAccountDto {
  /** By which they are known when they sign in; case does not matter. */
  @PlainText(longestName) signInName: string;
  /** At least 12 characters, and not one that is soon guessed. */
  @IsString() @Length(1, mostCharacters) password: string;
}

export class SetUpDto extends NewAccountDto {
  /** What stands behind the # of the link on the console. */
  @PlainText(longestSecret) secret: string;
  @PlainText(longestName) studioName: string;
  /** IANA name. */
  @IsTimeZone() timeZone: string;
  @PlainText(longestName) ownerName: string;
}

export class LookAtInvitationDto {
  /** What stands behind the # of the link. */
  @PlainText(longestSecret) secret: string;
}

export class AcceptInvitationDto extends LookAtInvitationDto {
  /** For somebody who has no account yet; left out by whoever is signed in, or only needs a new password. */
  @MayBeLeftOut() @PlainText(longestName) signInName?: string;
  /** Left out by whoever is signed in already and only joins another studio. */
  @MayBeLeftOut() @IsString() @Length(1, mostCharacters) password?: string;
}

export class ChangePasswordDto {
  /** Left out by whoever has none. */
  @MayBeLeftOut() @IsString() @Length(1, mostCharacters) currentPassword?: string;
  @IsString() @Length(1, mostCharacters) newPassword: string;
}

export class EndSignInsDto {
  /** The one to end; left out: all but this browser's own. */
  @MayBeLeftOut() @NamedId() signInId?: string;
}
