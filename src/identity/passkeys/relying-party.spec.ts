import { describe, expect, it } from 'vitest';
import { relyingPartyOf } from './relying-party.js';

const local = 'http://localhost:3000';

describe('the relying party of a page', () => {
  it.each([
    ['https://lotward.studio.example', 'https://lotward.studio.example', 'lotward.studio.example'],
    ['https://lotward.studio.example:8443', 'https://lotward.studio.example:8443', 'lotward.studio.example'],
    [local, 'https://lotward.studio.example', 'localhost'],
    [local, local, 'localhost'],
  ])('at %s, with the public address %s, is %s', (page, publicUrl, id) => {
    expect(relyingPartyOf(page, publicUrl, local)).toEqual({ id, origin: page });
  });

  it('of a program that tells no page is that of the public address', () => {
    expect(relyingPartyOf(undefined, 'https://lotward.studio.example', local)?.id).toBe(
      'lotward.studio.example',
    );
  });

  it.each([
    ['an address of digits', 'https://192.168.1.20', 'https://192.168.1.20'],
    ['an address of IPv6', 'https://[::1]:3000', 'https://[::1]:3000'],
    ['the loopback address', 'http://127.0.0.1:3000', 'http://127.0.0.1:3000'],
    ['plain HTTP', 'http://lotward.studio.example', 'http://lotward.studio.example'],
    ['another host', 'https://lotward.example', 'https://lotward.studio.example'],
    ['another port of this machine', 'http://localhost:8080', 'https://lotward.studio.example'],
    ['another scheme of the host', 'http://lotward.studio.example', 'https://lotward.studio.example'],
    ['a host that begins alike', 'https://localhost.example', 'https://lotward.studio.example'],
    ['no origin', 'null', 'https://lotward.studio.example'],
  ])('is none at %s', (_, page, publicUrl) => {
    expect(relyingPartyOf(page, publicUrl, local)).toBeUndefined();
  });
});
