import { describe, expect, it } from 'vitest';
import { isCrossSite, type Provenance } from './cross-site.js';

const publicUrl = 'https://lotward.studio.example';
const asks = (given: Partial<Provenance>): boolean =>
  isCrossSite(
    { method: 'POST', secFetchSite: undefined, origin: undefined, host: 'localhost:3000', ...given },
    publicUrl,
  );

// OWASP Cross-Site Request Forgery Prevention Cheat Sheet [S]; W3C Fetch Metadata Request Headers, the four values of
// Sec-Fetch-Site [M].
describe('a request for a change', () => {
  it.each([
    { secFetchSite: 'same-origin' },
    { secFetchSite: 'none' },
    { origin: publicUrl },
    { origin: 'http://localhost:3000' },
    { origin: 'http://studio.example', host: 'studio.example' },
    { origin: 'https://studio.example', host: 'studio.example:443' },
    // A program, which has no cookies of somebody else.
    {},
  ])('may come from the service itself: %o', (given) => {
    expect(asks(given)).toBe(false);
  });

  it.each([
    { secFetchSite: 'cross-site' },
    { secFetchSite: 'same-site' },
    { secFetchSite: 'SAME-ORIGIN' },
    { secFetchSite: '' },
    { secFetchSite: 'same-origin, cross-site' },
    // What the browser says of itself counts more than what Origin says.
    { secFetchSite: 'cross-site', origin: publicUrl },
    { origin: 'null' },
    { origin: '' },
    { origin: 'https://attacker.example' },
    { origin: 'http://lotward.studio.example' },
    { origin: 'https://lotward.studio.example:8443' },
    { origin: 'http://localhost:8080' },
    { origin: 'http://localhost:3000', host: undefined },
    { origin: 'file://' },
    { origin: 'https://lotward.studio.example.attacker.example' },
  ])('may not come from elsewhere: %o', (given) => {
    expect(asks(given)).toBe(true);
    expect(asks({ ...given, method: 'PATCH' })).toBe(true);
    expect(asks({ ...given, method: 'post' })).toBe(true);
  });

  it.each(['GET', 'HEAD', 'OPTIONS'])('is not what %s is', (method) => {
    expect(asks({ method, secFetchSite: 'cross-site', origin: 'https://attacker.example' })).toBe(false);
  });
});
