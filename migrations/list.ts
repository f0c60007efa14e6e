import { Identity1795600000001 } from './1795600000001-identity.js';
import { Alerts1795600000002 } from './1795600000002-alerts.js';
import { Catalogue1795600000003 } from './1795600000003-catalogue.js';
import { Stock1795600000004 } from './1795600000004-stock.js';
import { Sessions1795600000005 } from './1795600000005-sessions.js';
import { SignIn1795600000006 } from './1795600000006-sign-in.js';
import { Transfers1795600000007 } from './1795600000007-transfers.js';
import { Retention1795600000008 } from './1795600000008-retention.js';
import { Passkeys1795600000009 } from './1795600000009-passkeys.js';
import { Bookings1795600000010 } from './1795600000010-bookings.js';
import { Recalls1795600000011 } from './1795600000011-recalls.js';
import { AlertChannels1795600000012 } from './1795600000012-alert-channels.js';
import { Reorder1795600000013 } from './1795600000013-reorder.js';
import { PlanLeases1795600000014 } from './1795600000014-plan-leases.js';

/** The history of the schema, in order. Append only: a landed migration is never edited. */
export const migrations = [
  Identity1795600000001,
  Alerts1795600000002,
  Catalogue1795600000003,
  Stock1795600000004,
  Sessions1795600000005,
  SignIn1795600000006,
  Transfers1795600000007,
  Retention1795600000008,
  Passkeys1795600000009,
  Bookings1795600000010,
  Recalls1795600000011,
  AlertChannels1795600000012,
  Reorder1795600000013,
  PlanLeases1795600000014,
];
