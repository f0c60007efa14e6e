export const roles = ['owner', 'manager', 'artist', 'auditor', 'chain manager'] as const;
export type Role = (typeof roles)[number];

const everyone = roles;
const staff = ['owner', 'manager', 'artist'] as const;
const staffAndChain = [...staff, 'chain manager'] as const;
const management = ['owner', 'manager', 'chain manager'] as const;
const heads = ['owner', 'chain manager'] as const;

/**
 * Who may do what. An auditor only reads, and neither an auditor nor a chain manager is shown who a client is: they see
 * the client's reference (data minimisation, GDPR Art. 5(1)(c)). A manager runs the desk and may stand in for an artist.
 */
export const permissionTable = {
  'see the studio': everyone,
  'change the studio': heads,
  'add studios': heads,
  'manage people': heads,
  'enrol tablets': ['owner', 'manager'],
  'issue tokens': management,

  'see alerts': everyone,
  'answer alerts': staffAndChain,
  // On a browser of one's own: a tablet on the wall is nobody's.
  'be told of alerts': everyone,
  'change alert channels': management,

  'read the register': everyone,
  'change the register': management,

  'read stock': everyone,
  'read symbols': everyone,
  'receive stock': staffAndChain,
  'open containers': staffAndChain,
  'handle stock': staffAndChain,
  'correct stock': management,
  'set levels': management,
  'place holds': staffAndChain,
  'release holds': management,
  'print labels': staffAndChain,
  'make blends': staff,
  'transfer stock': management,
  // It adds makers and products too.
  'take in opening stock': management,

  'read clients': staff,
  'change clients': staff,
  'hand out client data': ['owner', 'manager'],
  'erase clients': ['owner'],

  'read sessions': everyone,
  'plan sessions': staff,
  // It finds clients and adds them too.
  'take in bookings': ['owner', 'manager'],
  'work the tray': staff,
  'record late': staff,
  'change procedures': ['owner', 'manager'],
  trace: everyone,

  'read plans': everyone,
  'plan orders': management,
  'place orders': management,

  'read recalls': everyone,
  'answer recalls': management,
  'find held stock': staffAndChain,
  // Whoever tells clients sees who they are.
  'tell clients of recalls': ['owner', 'manager'],
  // Each studio is asked whether this person leads it too.
  'answer recalls of the chain': heads,

  'read the audit log': ['owner', 'auditor', 'chain manager'],
  'see backups': ['owner', 'chain manager'],
} as const satisfies Record<string, readonly Role[]>;

export type Permission = keyof typeof permissionTable;
export const permissions = Object.keys(permissionTable) as Permission[];

/** What an enrolled treatment-room tablet may be used for, by whoever showed a badge or PIN on it. */
export const trayWork: ReadonlySet<Permission> = new Set<Permission>([
  'see the studio',
  'see alerts',
  'read the register',
  'read stock',
  'read symbols',
  'open containers',
  'read sessions',
  'work the tray',
]);

export function roleMay(role: Role, permission: Permission): boolean {
  return (permissionTable[permission] as readonly Role[]).includes(role);
}

/** Worked out once: every request asks. */
const byRole = new Map(
  roles.map((role) => [role, permissions.filter((permission) => roleMay(role, permission))]),
);

export function permissionsOf(role: Role): Permission[] {
  return [...(byRole.get(role) ?? [])];
}

/** Whether somebody of a role may do all that somebody of another may. */
export function covers(role: Role, other: Role): boolean {
  return permissionsOf(other).every((permission) => roleMay(role, permission));
}
