import { describe, expect, it } from 'vitest';
import { addressBytes, encodeNameConstraints, permitsName } from './name-constraints.js';

const hex = (bytes: Buffer) => bytes.toString('hex');

// RFC 5280, 4.2.1.10: Name Constraints ::= SEQUENCE { permittedSubtrees [0] … }, GeneralSubtree ::= SEQUENCE { base },
// a host name as [2] IA5String, an address as [7] of address and mask [M]. What OpenSSL reads of a whole certificate is
// compared in tests/end-to-end/tls.spec.ts.
describe('name constraints', () => {
  it('are encoded as the standard says', () => {
    expect(hex(encodeNameConstraints(['lan', '10.0.0.0/8']))).toBe(
      ['3015', 'a013', '3005', '82036c616e', '300a', '87080a000000ff000000'].join(''),
    );
  });

  it.each([
    ['192.168.1.20', 'c0a80114'],
    ['::', '0'.repeat(32)],
    ['::1', `${'0'.repeat(31)}1`],
    ['fd00::2', `fd00${'0'.repeat(27)}2`],
    ['1:2:3:4:5:6:7:8', '00010002000300040005000600070008'],
    ['::ffff:10.0.0.1', `${'0'.repeat(20)}ffff0a000001`],
  ])('write the address %s in bytes', (address, bytes) => {
    expect(hex(addressBytes(address))).toBe(bytes);
  });

  const constraints = encodeNameConstraints([
    'local',
    'studio.example',
    '192.168.0.0/16',
    'fe80::/10',
    '203.0.113.7',
  ]);

  it.each([
    'studio.local',
    'a.b.local',
    'local',
    'STUDIO.local',
    'studio.example',
    '192.168.255.1',
    'fe80::1',
    '203.0.113.7',
  ])('permit %s', (name) => {
    expect(permitsName(constraints, name)).toBe(true);
  });

  it.each([
    'example',
    'locals',
    'xlocal',
    'bank.example',
    '192.169.0.1',
    'fec0::1',
    '203.0.113.8',
    '0.0.0.0',
    '::',
  ])('do not permit %s', (name) => {
    expect(permitsName(constraints, name)).toBe(false);
  });

  it('are encoded whole when there are many', () => {
    const names = Array.from({ length: 200 }, (_, index) => `name-${index}.example`);
    const many = encodeNameConstraints(names);
    expect(many.length).toBe(many.readUInt16BE(2) + 4);
    expect(names.every((name) => permitsName(many, name))).toBe(true);
  });
});
