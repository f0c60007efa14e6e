import { ArrayMaxSize, IsIn, IsInt, IsObject, IsString, Matches, MaxLength } from 'class-validator';
import { MayBeLeftOut } from '../../platform/may-be-left-out.js';
import { Nested } from '../../platform/nested.js';
import { PlainText } from '../../platform/plain-text.js';
import { Version } from '../../platform/version.js';

/** More than any authenticator sends: post-quantum keys have some 2,000 bytes, attestation is not asked for. */
const longestPart = 16_384;
const longestName = 100;

/** Bytes as base64url without padding. */
function Bytes(): PropertyDecorator {
  return (target, property) => {
    IsString()(target, property);
    MaxLength(longestPart)(target, property);
    Matches(/^[\w-]+$/, { message: '$property must be base64url' })(target, property);
  };
}

class AttestationDto {
  @Bytes() clientDataJSON: string;
  @Bytes() attestationObject: string;
  @MayBeLeftOut() @Bytes() authenticatorData?: string;
  @MayBeLeftOut()
  @IsString({ each: true })
  @MaxLength(40, { each: true })
  @ArrayMaxSize(10)
  transports?: string[];
  @MayBeLeftOut() @IsInt() publicKeyAlgorithm?: number;
  @MayBeLeftOut() @Bytes() publicKey?: string;
}

class AssertionDto {
  @Bytes() clientDataJSON: string;
  @Bytes() authenticatorData: string;
  @Bytes() signature: string;
  @MayBeLeftOut() @Bytes() userHandle?: string;
}

/** What an answer of any kind consists of, besides the answer itself. */
class CredentialDto {
  @Bytes() id: string;
  @Bytes() rawId: string;
  @IsIn(['public-key']) type: 'public-key';
  @MayBeLeftOut() @IsIn(['platform', 'cross-platform']) authenticatorAttachment?:
    | 'platform'
    | 'cross-platform';
  @IsObject() clientExtensionResults: object;
}

/** RegistrationResponseJSON of WebAuthn Level 3: what `PublicKeyCredential.toJSON()` gives. */
export class RegistrationResponseDto extends CredentialDto {
  @Nested(() => AttestationDto) response: AttestationDto;
}

/** AuthenticationResponseJSON of WebAuthn Level 3. */
export class AuthenticationResponseDto extends CredentialDto {
  @Nested(() => AssertionDto) response: AssertionDto;
}

export class AddPasskeyDto {
  /** By which its owner knows it, such as the device it is on. */
  @PlainText(longestName) name: string;
  @Nested(() => RegistrationResponseDto) credential: RegistrationResponseDto;
}

export class RenamePasskeyDto {
  @PlainText(longestName) name: string;
  /** The version this change was made from. */
  @Version() version: number;
}

export class PasskeySignInDto {
  @Nested(() => AuthenticationResponseDto) credential: AuthenticationResponseDto;
}
