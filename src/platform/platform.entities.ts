import { AcceptedRequest, AuditEntry, AuditHead } from './audit/audit-entry.entity.js';
import { DataKey, StudioKey } from './encryption/data-key.entity.js';
import { ServiceKeyRow } from './encryption/service-key.entity.js';

export const platformEntities = [AcceptedRequest, AuditEntry, AuditHead, DataKey, StudioKey, ServiceKeyRow];
