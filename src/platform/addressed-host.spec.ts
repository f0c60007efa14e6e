import { describe, expect, it } from 'vitest';
import { namesThisService } from './addressed-host.js';

const publicUrl = 'https://lotward.studio.example';

describe('the name a request is addressed to', () => {
  it.each([
    'localhost',
    'localhost:3000',
    'LOCALHOST:3000',
    '127.0.0.1:3000',
    '[::1]:3000',
    'lotward.studio.example',
    'Lotward.Studio.Example:443',
    '192.168.1.20',
    '192.168.1.20:3000',
  ])('may be %s', (host) => {
    expect(namesThisService(host, publicUrl, '::ffff:192.168.1.20')).toBe(true);
  });

  it.each([
    undefined,
    '',
    'attacker.example',
    'attacker.example:3000',
    'localhost.attacker.example',
    'lotward.studio.example.attacker.example',
    'studio.example',
    '192.168.1.21',
    'localhost:3000:1',
    'localhost@attacker.example',
    'attacker.example/localhost',
    '127.0.0.1.attacker.example',
    '[::1].attacker.example',
    '2130706433',
  ])('may not be %s', (host) => {
    expect(namesThisService(host, publicUrl, '192.168.1.20')).toBe(false);
  });

  it('may be the IPv6 address it came in at, in any spelling', () => {
    expect(namesThisService('[fd00::2]:3000', publicUrl, 'fd00:0:0::2')).toBe(true);
    expect(namesThisService('[fd00::3]:3000', publicUrl, 'fd00::2')).toBe(false);
  });
});
