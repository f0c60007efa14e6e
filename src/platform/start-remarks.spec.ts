import { describe, expect, it } from 'vitest';
import { readConfig } from './config.js';
import { startRemarks } from './start-remarks.js';

const said = (environment: Record<string, string>) => startRemarks(readConfig(environment)).join('\n');

describe('what is said aloud at every start', () => {
  it.each<Record<string, string>>([
    {},
    { HOST: '::1' },
    { HOST: '127.0.0.1', PUBLIC_URL: 'http://localhost:3000' },
    { PUBLIC_URL: 'https://studio.example', TRUST_PROXY: '127.0.0.1' },
    { HOST: '10.0.0.5', PUBLIC_URL: 'https://studio.example', TRUST_PROXY: '10.0.0.1' },
  ])('is nothing when nobody can listen: %o', (environment) => {
    expect(said(environment)).toBe('');
  });

  it.each<Record<string, string>>([
    { HOST: '0.0.0.0' },
    { HOST: '::' },
    { HOST: '192.168.1.20' },
    { HOST: '0.0.0.0', PUBLIC_URL: 'http://studio.local:3000' },
    { HOST: '127.0.0.1', PUBLIC_URL: 'http://studio.local' },
    { HOST: '0.0.0.0', PUBLIC_URL: 'https://studio.example' },
  ])('is what can be read on the way, and what to do: %o', (environment) => {
    expect(said(environment)).toMatch(/NOT ENCRYPTED/);
    expect(said(environment)).toMatch(/passwords, the names of clients/);
    expect(said(environment)).toMatch(/make-local-certificate/);
    expect(said(environment)).toMatch(/TLS_CERTIFICATE_FILE/);
    expect(said(environment)).toMatch(/TRUST_PROXY/);
  });

  it('is that a proxy hides from where people ask', () => {
    expect(said({ PUBLIC_URL: 'https://studio.example' })).toMatch(/TRUST_PROXY is not set/);
  });
});
