import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock.js';
import { Database } from '../../platform/database/database.js';
import { localDay } from '../local-day.js';
import { type Permission, permissionsOf, type Role, trayWork } from '../permissions.js';
import type { Requester } from './credentials.service.js';

/** What somebody is in a studio, and may do there. */
export interface Standing {
  studioId: string;
  studioName: string;
  chainId: string;
  timeZone: string;
  personId: string;
  role: Role;
  until: string | null;
  may: ReadonlySet<Permission>;
  /** The studio asks for a passkey, and the requester signed in at a browser without one: they may do nothing there. */
  passkeyNeeded: boolean;
}

type StandingRow = Omit<Standing, 'may' | 'passkeyNeeded'> & { passkeysRequired: number | null };

const mostStudios = 200;

/** Finds what a requester is in the studios of this service. */
@Injectable()
export class Standings {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** All studios where the requester is an active person; of a program or a shared tablet the one it is bound to. */
  async of(requester: Requester): Promise<Standing[]> {
    return this.find(requester, null);
  }

  /** The standing in one studio; undefined when there is none, or no such studio. */
  async in(studioId: string, requester: Requester): Promise<Standing | undefined> {
    const [standing] = await this.find(requester, studioId);
    return standing;
  }

  private async find(requester: Requester, studioId: string | null): Promise<Standing[]> {
    const bound =
      'program' in requester ? requester.program.studioId : (requester.browser.tablet?.studioId ?? null);
    if (bound !== null && studioId !== null && bound !== studioId) return [];
    const [column, holder] =
      'program' in requester
        ? ['id', requester.program.personId]
        : ['account_id', requester.browser.accountId];
    const one = studioId ?? bound;
    const rows = await this.database.read<StandingRow>(
      `SELECT studio.id AS "studioId", studio.name AS "studioName", studio.chain_id AS "chainId",
         studio.time_zone AS "timeZone", studio.passkeys_required AS "passkeysRequired", person.id AS "personId", person.role, person.until
       FROM person JOIN studio ON studio.id = person.studio_id
       WHERE person.${column} = $1 AND person.state = 'active' ${one === null ? '' : 'AND person.studio_id = $2'}
       ORDER BY studio.created_at, studio.id LIMIT ${mostStudios}`,
      one === null ? [holder] : [holder, one],
    );
    const now = this.clock.now();
    return rows
      .filter(({ until, timeZone }) => until === null || localDay(now, timeZone) <= until)
      .map(({ passkeysRequired, ...row }) => {
        const passkeyNeeded = passkeysRequired !== null && signedInWithoutPasskey(requester);
        return { ...row, may: passkeyNeeded ? nothing : mayDo(row.role, requester), passkeyNeeded };
      });
  }
}

const nothing: ReadonlySet<Permission> = new Set();

/** A token and an enrolled tablet are no browser of one's own, and what they may do is narrower. */
function signedInWithoutPasskey(requester: Requester): boolean {
  return (
    'browser' in requester && requester.browser.tablet === null && requester.browser.method !== 'passkey'
  );
}

function mayDo(role: Role, requester: Requester): ReadonlySet<Permission> {
  const ofRole = permissionsOf(role);
  if ('program' in requester) {
    const scopes = new Set(requester.program.scopes);
    return new Set(ofRole.filter((each) => scopes.has(each)));
  }
  if (requester.browser.tablet !== null) return new Set(ofRole.filter((each) => trayWork.has(each)));
  return new Set(ofRole);
}
