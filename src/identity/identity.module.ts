import { Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { ActorGuard } from './actor.guard.js';
import { Administration } from './administration.service.js';
import { FirstStart } from './first-start.service.js';
import { FoundedStudios } from './founded-studios.service.js';
import { PeopleController } from './people.controller.js';
import { People } from './people.service.js';
import { Person } from './person.entity.js';
import { AccessController } from './sign-in/access.controller.js';
import { Account } from './sign-in/account.entity.js';
import { Accounts } from './sign-in/accounts.service.js';
import { ApiToken } from './sign-in/api-token.entity.js';
import { ApiTokens } from './sign-in/api-tokens.service.js';
import { Credentials } from './sign-in/credentials.service.js';
import { FailedSignIns } from './sign-in/failed-sign-ins.service.js';
import { Invitations } from './sign-in/invitations.service.js';
import { OneTimeLink } from './sign-in/one-time-link.entity.js';
import { OneTimeLinks } from './sign-in/one-time-links.service.js';
import { OwnAccountController } from './sign-in/own-account.controller.js';
import { OwnAccount } from './sign-in/own-account.service.js';
import { PasswordSignIn } from './sign-in/password-sign-in.service.js';
import { Passwords } from './sign-in/passwords.service.js';
import { Secrets } from './sign-in/secrets.service.js';
import { SetUpLinks } from './sign-in/set-up-links.service.js';
import { SignInController } from './sign-in/sign-in.controller.js';
import { SignInCookies } from './sign-in/sign-in-cookies.service.js';
import { SignIns } from './sign-in/sign-ins.service.js';
import { Standings } from './sign-in/standings.service.js';
import { Chain, Studio } from './studio.entity.js';
import { StudioChanges } from './studio-changes.service.js';
import { StudioFounding } from './studio-founding.service.js';
import { StudiosController } from './studios.controller.js';
import { Studios } from './studios.service.js';

export const identityEntities = [Chain, Studio, Person, Account, OneTimeLink, ApiToken];

@Module({
  controllers: [
    StudiosController,
    PeopleController,
    SignInController,
    OwnAccountController,
    AccessController,
  ],
  providers: [
    Studios,
    StudioChanges,
    People,
    FoundedStudios,
    StudioFounding,
    FirstStart,
    Accounts,
    Passwords,
    Secrets,
    FailedSignIns,
    SignIns,
    SignInCookies,
    PasswordSignIn,
    ApiTokens,
    Credentials,
    Standings,
    OneTimeLinks,
    Invitations,
    SetUpLinks,
    OwnAccount,
    Administration,
    { provide: APP_GUARD, useClass: ActorGuard },
  ],
  exports: [Studios, StudioChanges, FoundedStudios, People],
})
export class IdentityModule {}
