import { Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { ActorGuard } from './actor.guard.js';
import { Administration } from './administration.service.js';
import { Departures } from './departures.service.js';
import { FirstStart } from './first-start.service.js';
import { FoundedStudios } from './founded-studios.service.js';
import { Passkey } from './passkeys/passkey.entity.js';
import { PasskeyChallenges } from './passkeys/passkey-challenges.service.js';
import { PasskeyRegistration } from './passkeys/passkey-registration.service.js';
import { PasskeySignIn } from './passkeys/passkey-sign-in.service.js';
import { PasskeysController } from './passkeys/passkeys.controller.js';
import { Passkeys } from './passkeys/passkeys.service.js';
import { PeopleController } from './people.controller.js';
import { People } from './people.service.js';
import { Person } from './person.entity.js';
import { AccessController } from './sign-in/access.controller.js';
import { Account } from './sign-in/account.entity.js';
import { Accounts } from './sign-in/accounts.service.js';
import { ApiToken } from './sign-in/api-token.entity.js';
import { ApiTokens } from './sign-in/api-tokens.service.js';
import { BrowserSignIns } from './sign-in/browser-sign-ins.service.js';
import { CredentialUses } from './sign-in/credential-uses.service.js';
import { Credentials } from './sign-in/credentials.service.js';
import { FailedSignIns } from './sign-in/failed-sign-ins.service.js';
import { Invitations } from './sign-in/invitations.service.js';
import { OneTimeLink } from './sign-in/one-time-link.entity.js';
import { OneTimeLinks } from './sign-in/one-time-links.service.js';
import { OwnAccountController } from './sign-in/own-account.controller.js';
import { OwnAccount } from './sign-in/own-account.service.js';
import { OwnCookies } from './sign-in/own-cookies.service.js';
import { OwnPassword } from './sign-in/own-password.service.js';
import { PasswordSignIn } from './sign-in/password-sign-in.service.js';
import { Passwords } from './sign-in/passwords.service.js';
import { RecentSignIns } from './sign-in/recent-sign-ins.service.js';
import { Secrets } from './sign-in/secrets.service.js';
import { SetUpLinks } from './sign-in/set-up-links.service.js';
import { SignInController } from './sign-in/sign-in.controller.js';
import { SignInCookies } from './sign-in/sign-in-cookies.service.js';
import { SignIns } from './sign-in/sign-ins.service.js';
import { Standings } from './sign-in/standings.service.js';
import { WaysToSignIn } from './sign-in/ways-to-sign-in.service.js';
import { StillAdmitted } from './still-admitted.service.js';
import { Chain, Studio } from './studio.entity.js';
import { StudioActors } from './studio-actors.service.js';
import { StudioChanges } from './studio-changes.service.js';
import { StudioFounding } from './studio-founding.service.js';
import { StudiosController } from './studios.controller.js';
import { Studios } from './studios.service.js';
import { BadgeDrawing } from './tablets/badge-drawing.service.js';
import { Badges } from './tablets/badges.service.js';
import { OwnPinController } from './tablets/own-pin.controller.js';
import { Pins } from './tablets/pins.service.js';
import { Tablet } from './tablets/tablet.entity.js';
import { TabletCredential } from './tablets/tablet-credential.entity.js';
import { TabletCredentials } from './tablets/tablet-credentials.service.js';
import { TabletSwitchController } from './tablets/tablet-switch.controller.js';
import { TabletSwitch } from './tablets/tablet-switch.service.js';
import { TabletsController } from './tablets/tablets.controller.js';
import { Tablets } from './tablets/tablets.service.js';

export const identityEntities = [
  Chain,
  Studio,
  Person,
  Account,
  OneTimeLink,
  ApiToken,
  Passkey,
  Tablet,
  TabletCredential,
];

@Module({
  controllers: [
    StudiosController,
    PeopleController,
    SignInController,
    OwnAccountController,
    AccessController,
    PasskeysController,
    TabletsController,
    TabletSwitchController,
    OwnPinController,
  ],
  providers: [
    Studios,
    StudioActors,
    StudioChanges,
    Departures,
    People,
    FoundedStudios,
    StudioFounding,
    FirstStart,
    Accounts,
    Passwords,
    Secrets,
    FailedSignIns,
    SignIns,
    OwnCookies,
    SignInCookies,
    BrowserSignIns,
    CredentialUses,
    WaysToSignIn,
    RecentSignIns,
    PasswordSignIn,
    OwnPassword,
    ApiTokens,
    Credentials,
    Standings,
    StillAdmitted,
    OneTimeLinks,
    Invitations,
    SetUpLinks,
    OwnAccount,
    PasskeyChallenges,
    Passkeys,
    PasskeyRegistration,
    PasskeySignIn,
    Tablets,
    TabletCredentials,
    BadgeDrawing,
    Badges,
    Pins,
    TabletSwitch,
    Administration,
    { provide: APP_GUARD, useClass: ActorGuard },
  ],
  exports: [Studios, StudioActors, StudioChanges, Departures, FoundedStudios, People, Secrets, StillAdmitted],
})
export class IdentityModule {}
