import type { Permission } from '../permissions.js';

export class ApiTokenView {
  id: string;
  /** As whom the token acts. */
  personId: string;
  name: string;
  scopes: Permission[];
  createdAt: string;
  expiresAt: string;
  revokedAt: string | null;
  /** To the minute; null: never used. */
  lastUsedAt: string | null;
}

export class MadeApiTokenView {
  id: string;
  expiresAt: string;
  /** The token itself: shown in this answer and never again. */
  token: string;
}

export class RevokedApiTokenView {
  id: string;
  revokedAt: string;
}
