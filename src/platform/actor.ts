/** By what way a write came in. */
export type Via = 'api' | 'paper' | 'system' | 'cli';

/** Who writes, and in which studio: every write carries one, made by one guard. */
export interface Actor {
  studioId: string;
  /** The chain whose product register the studio uses. */
  chainId: string;
  /** IANA time zone by which the studio's days are judged. */
  timeZone: string;
  /** Null only for what the service does by itself, such as the daily sweep. */
  personId: string | null;
  via: Via;
  /** Whether names, contacts and notes of clients may be shown; else only their references are. */
  seesClients: boolean;
}

/** The service itself acting in a studio. */
export function systemActor(studio: { id: string; chainId: string; timeZone: string }): Actor {
  const { id: studioId, chainId, timeZone } = studio;
  return { studioId, chainId, timeZone, personId: null, via: 'system', seesClients: false };
}
