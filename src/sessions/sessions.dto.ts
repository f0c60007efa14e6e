import { IsIn, IsOptional, Matches } from 'class-validator';
import { NewClientDto } from '../clients/clients.dto.js';
import { IsInstant } from '../platform/instant.js';
import { MayBeLeftOut } from '../platform/may-be-left-out.js';
import { NamedId } from '../platform/named-id.js';
import { Nested } from '../platform/nested.js';
import { PlainText } from '../platform/plain-text.js';
import { EventDto, PageDto, WriteDto } from '../platform/request.dto.js';
import { Version } from '../platform/version.js';
import {
  type BodyPlace,
  bodyPlaces,
  type SessionState,
  sessionStates,
  type VisitKind,
  visitKinds,
} from './vocabulary.js';

export const maximumDetailLength = 200;
const day = /^\d{4}-\d{2}-\d{2}$/;

export class PlanSessionDto extends WriteDto {
  @NamedId() clientId: string;
  @NamedId() artistId: string;
  @NamedId() procedureId: string;
  @IsIn(visitKinds) visitKind: VisitKind;
  /** Left out: the procedure's. */
  @MayBeLeftOut() @IsIn(bodyPlaces) bodyPlace?: BodyPlace;
  /** Where exactly; kept sealed. */
  @IsOptional() @PlainText(maximumDetailLength) bodyPlaceDetail?: string | null;
  /** When the client booked; left out: not known. */
  @IsOptional() @IsInstant() bookedAt?: string | null;
  @IsInstant() plannedStart: string;
  /** The earlier session this one touches up, refreshes or corrects. Left out for a touch-up: the client's latest completed first session of the procedure. */
  @IsOptional() @NamedId() followsSessionId?: string | null;
}

/** A client who is here now; exactly one of clientId and client is given. */
export class WalkInDto extends EventDto {
  @MayBeLeftOut() @NamedId() clientId?: string;
  /** A client who is not known yet. */
  @MayBeLeftOut() @Nested(() => NewClientDto) client?: NewClientDto;
  @NamedId() artistId: string;
  @NamedId() procedureId: string;
  @IsIn(visitKinds) visitKind: VisitKind;
  /** Left out: the procedure's. */
  @MayBeLeftOut() @IsIn(bodyPlaces) bodyPlace?: BodyPlace;
  /** Where exactly; kept sealed. */
  @IsOptional() @PlainText(maximumDetailLength) bodyPlaceDetail?: string | null;
  /** As for a planned session. */
  @IsOptional() @NamedId() followsSessionId?: string | null;
}

export class ChangeSessionDto extends WriteDto {
  /** The version this change was made from. */
  @Version() version: number;
  @MayBeLeftOut() @NamedId() artistId?: string;
  @MayBeLeftOut() @NamedId() procedureId?: string;
  @MayBeLeftOut() @IsIn(visitKinds) visitKind?: VisitKind;
  @MayBeLeftOut() @IsIn(bodyPlaces) bodyPlace?: BodyPlace;
  /** Null takes it away. */
  @IsOptional() @PlainText(maximumDetailLength) bodyPlaceDetail?: string | null;
  @IsOptional() @IsInstant() bookedAt?: string | null;
  @MayBeLeftOut() @IsInstant() plannedStart?: string;
  /** Null takes it away. */
  @IsOptional() @NamedId() followsSessionId?: string | null;
}

/** Setup begins, the session is cancelled, or the client did not come. */
export class SessionStepDto extends EventDto {}

export class ListSessionsDto extends PageDto {
  /** First local day of the studio, YYYY-MM-DD. */
  @MayBeLeftOut() @Matches(day, { message: 'from must be a day such as 2026-03-01' }) from?: string;
  /** Last local day, which is included. */
  @MayBeLeftOut() @Matches(day, { message: 'to must be a day such as 2026-03-01' }) to?: string;
  @MayBeLeftOut() @IsIn(sessionStates) state?: SessionState;
  @MayBeLeftOut() @NamedId() artistId?: string;
  @MayBeLeftOut() @NamedId() clientId?: string;
}
