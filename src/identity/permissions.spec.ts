import { describe, expect, it } from 'vitest';
import {
  covers,
  permissions,
  permissionsOf,
  permissionTable,
  roleMay,
  roles,
  trayWork,
} from './permissions.js';

const changing = permissions.filter((permission) => !/^(see|read) |^trace$/.test(permission));

describe('the table of permissions', () => {
  it('gives each permission to somebody, and only to roles there are', () => {
    for (const allowed of Object.values(permissionTable)) {
      expect(allowed.length).toBeGreaterThan(0);
      expect(roles).toEqual(expect.arrayContaining([...allowed]));
    }
  });

  it('lets an auditor read, and nothing else', () => {
    // How they are told concerns nobody but themselves.
    const may = permissionsOf('auditor').filter((permission) => permission !== 'be told of alerts');
    expect(may.filter((permission) => changing.includes(permission))).toEqual([]);
    expect(permissionsOf('auditor')).toContain('trace');
  });

  it('shows who a client is to those who treat or receive them, not to an auditor or the chain', () => {
    expect(roles.filter((role) => roleMay(role, 'read clients'))).toEqual(['owner', 'manager', 'artist']);
  });

  it('gives an owner everything', () => {
    expect(permissionsOf('owner')).toEqual(permissions);
  });

  it('gives a manager everything an artist has', () => {
    expect(permissionsOf('manager')).toEqual(expect.arrayContaining(permissionsOf('artist')));
  });

  it('lets a shared tablet neither show who a client is nor change people, tokens or the register', () => {
    for (const kept of ['read clients', 'manage people', 'issue tokens', 'change the register'] as const) {
      expect(trayWork.has(kept)).toBe(false);
    }
    expect([...trayWork].every((permission) => roleMay('artist', permission))).toBe(true);
  });

  it('lets an owner stand above all, and a chain manager above those who see no clients', () => {
    expect(roles.filter((role) => covers('owner', role))).toEqual(roles);
    expect(roles.filter((role) => covers('chain manager', role))).toEqual(['auditor', 'chain manager']);
  });
});
