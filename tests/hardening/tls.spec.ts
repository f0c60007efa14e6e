import 'reflect-metadata';
import { execFileSync, spawnSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect, type SecureVersion } from 'node:tls';
import { X509CertificateGenerator } from '@peculiar/x509';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type CommandResult, CommandsInTurn, runCommand } from '../support/commands.js';
import { type ServiceProcess, startInFolder } from '../support/service.js';

const dayMilliseconds = 86_400_000;

const command = (names: string[]) => ['make-local-certificate', '--name', ...names];
const inTurn = new CommandsInTurn();
afterAll(() => inTurn.end());

function makeCertificate(dataFolder: string, ...names: string[]): Promise<CommandResult> {
  return inTurn.run(command(names), { DATA_DIR: dataFolder });
}

const hasOpenssl = spawnSync('openssl', ['version']).status === 0 || process.env.CI !== undefined;
if (!hasOpenssl) process.stdout.write('\nSKIPPED: what needs the program openssl.\n\n');

/** Whether OpenSSL, as a program of its own, takes a certificate for a name. */
function opensslVerifies(folder: string, certificate: string, ...check: string[]): boolean {
  const authority = join(folder, 'authority.crt');
  return (
    spawnSync('openssl', [
      'verify',
      '-x509_strict',
      '-purpose',
      'sslserver',
      '-CAfile',
      authority,
      ...check,
      certificate,
    ]).status === 0
  );
}

describe('a local certificate', () => {
  const dataFolder = mkdtempSync(join(tmpdir(), 'lotward-test-'));
  const folder = join(dataFolder, 'tls');
  const file = (name: string) => join(folder, name);
  const text = (name: string) => readFileSync(file(name), 'utf8');
  const mode = (name: string) => statSync(file(name)).mode & 0o777;
  let service: ServiceProcess;
  let told: string;

  beforeAll(async () => {
    const names = ['studio.local', '192.168.1.20', 'fd00::2'];
    const made = await runCommand(command(names), { environment: { DATA_DIR: dataFolder } });
    expect(made.code, made.err).toBe(0);
    told = made.out;
    service = await startInFolder(dataFolder, { PUBLIC_URL: 'https://studio.local:3000' });
  });
  afterAll(() => {
    service.child.kill('SIGKILL');
    rmSync(dataFolder, { recursive: true, force: true });
  });

  /** Connects as a device that trusts the authority, and nobody else, and asks for a name. */
  function reach(
    name: string,
    ca = text('authority.crt'),
    maxVersion: SecureVersion = 'TLSv1.3',
  ): Promise<string> {
    const { port } = new URL(service.url);
    return new Promise((resolve, reject) => {
      const socket = connect(
        { host: '127.0.0.1', port: Number(port), servername: name, ca, maxVersion, minVersion: 'TLSv1' },
        () => {
          resolve(socket.getProtocol() ?? '');
          socket.end();
        },
      );
      socket.once('error', reject);
    });
  }

  it('tells what to set, and how to trust the authority on a phone', () => {
    const fingerprint = new X509Certificate(text('authority.crt')).fingerprint256;
    for (const words of [
      'HOST=0.0.0.0',
      'PUBLIC_URL=https://studio.local:3000',
      file('authority.crt'),
      fingerprint,
      'iPhone, iPad',
      'Android',
    ]) {
      expect(told).toContain(words);
    }
  });

  it('leaves its keys to be read by nobody else', () => {
    expect(statSync(folder).mode & 0o777).toBe(0o700);
    expect([mode('authority.key'), mode('service.key')]).toEqual([0o600, 0o600]);
  });

  it('is taken up by the service, which answers a device that trusts the authority', async () => {
    expect(service.url).toMatch(/^https:/);
    const body = await new Promise<string>((resolve, reject) => {
      request(
        `${service.url}/health/ready`,
        { ca: text('authority.crt'), headers: { host: 'studio.local' } },
        (answer) => answer.on('data', (part: Buffer) => resolve(part.toString())),
      )
        .once('error', reject)
        .end();
    });
    expect(JSON.parse(body)).toEqual({ status: 'ready', failing: [] });
    expect(await reach('studio.local')).toBe('TLSv1.3');
    expect(await reach('localhost')).toBe('TLSv1.3');
  });

  it('is no hindrance to whoever looks after the container', () => {
    const { status } = spawnSync(process.execPath, ['docker/health-check.mjs'], {
      env: { PATH: process.env.PATH, DATA_DIR: dataFolder, PORT: new URL(service.url).port },
    });
    expect(status).toBe(0);
  });

  // OWASP ASVS 5.0, 12.1.1 [P].
  it('is shown by TLS 1.3 and 1.2, and by nothing older', async () => {
    expect(await reach('studio.local', undefined, 'TLSv1.2')).toBe('TLSv1.2');
    await expect(reach('studio.local', undefined, 'TLSv1.1')).rejects.toThrow();
  });

  it('does for no other name, and for nobody who does not trust the authority', async () => {
    await expect(reach('bank.example')).rejects.toThrow(/altnames|Hostname/i);
    await expect(reach('studio.local', '')).rejects.toThrow(/self-signed|unable to (get|verify)/i);
  });

  it('has names, use and length of life that browsers ask for', () => {
    const certificate = new X509Certificate(text('service.crt'));
    expect(certificate.checkHost('studio.local')).toBe('studio.local');
    expect(certificate.checkIP('192.168.1.20')).toBe('192.168.1.20');
    expect(certificate.checkIP('fd00::2')).toBe('fd00::2');
    expect(certificate.checkIP('::1')).toBe('::1');
    // Extended key usage: TLS server authentication.
    expect(certificate.keyUsage).toEqual(['1.3.6.1.5.5.7.3.1']);
    expect(certificate.ca).toBe(false);
    const days = (Date.parse(certificate.validTo) - Date.parse(certificate.validFrom)) / dayMilliseconds;
    expect(days).toBeLessThanOrEqual(398);
    expect(certificate.publicKey.asymmetricKeyDetails?.namedCurve).toBe('prime256v1');
    expect(new X509Certificate(text('authority.crt')).ca).toBe(true);
  });

  // OpenSSL, a reader of certificates that had no part in making them.
  it.skipIf(!hasOpenssl)('is what OpenSSL takes it for', () => {
    const read = (name: string) =>
      execFileSync('openssl', ['x509', '-in', file(name), '-noout', '-text'], { encoding: 'utf8' });
    const authority = read('authority.crt');
    expect(authority).toMatch(/Basic Constraints: critical\s+CA:TRUE, pathlen:0/);
    expect(authority).toMatch(/Key Usage: critical\s+Certificate Sign, CRL Sign/);
    expect(authority).toMatch(/Name Constraints: critical\s+Permitted:/);
    for (const permitted of [
      'DNS:local',
      'DNS:home.arpa',
      'IP:10.0.0.0/255.0.0.0',
      'IP:172.16.0.0/255.240.0.0',
      'IP:FE80:0:0:0:0:0:0:0/FFC0:0:0:0:0:0:0:0',
    ]) {
      expect(authority).toContain(permitted);
    }
    const certificate = read('service.crt');
    expect(certificate).toMatch(/Basic Constraints: critical\s+CA:FALSE/);
    expect(certificate).toMatch(/Extended Key Usage:\s+TLS Web Server Authentication/);
    expect(certificate).toMatch(/ecdsa-with-SHA256/);
    expect(opensslVerifies(folder, file('service.crt'), '-verify_hostname', 'studio.local')).toBe(true);
    expect(opensslVerifies(folder, file('service.crt'), '-verify_ip', '192.168.1.20')).toBe(true);
    expect(opensslVerifies(folder, file('service.crt'), '-verify_hostname', 'bank.example')).toBe(false);
  });

  // Whoever has the key of the authority still cannot pretend to be a site of the public net.
  it.skipIf(!hasOpenssl).each([
    ['a name of the public net', 'DNS:bank.example', '-verify_hostname', 'bank.example', false],
    ['an address of the public net', 'IP:203.0.113.7', '-verify_ip', '203.0.113.7', false],
    ['another name of the local net', 'DNS:other.local', '-verify_hostname', 'other.local', true],
  ])('comes of an authority that for %s vouches as it should', (_, name, check, value, good) => {
    const work = mkdtempSync(join(tmpdir(), 'lotward-forged-'));
    const openssl = (...parameters: string[]) =>
      execFileSync('openssl', parameters, { cwd: work, stdio: 'pipe' });
    openssl('req', '-newkey', 'rsa:2048', '-nodes', '-keyout', 'k', '-out', 'r', '-subj', '/CN=forged');
    writeFileSync(
      join(work, 'e'),
      `subjectAltName=${name}\nbasicConstraints=critical,CA:FALSE\nextendedKeyUsage=serverAuth\nsubjectKeyIdentifier=hash\nauthorityKeyIdentifier=keyid\n`,
    );
    openssl(
      ...['x509', '-req', '-in', 'r', '-CA', file('authority.crt'), '-CAkey', file('authority.key')],
      ...['-CAcreateserial', '-CAserial', 's', '-days', '30', '-extfile', 'e', '-out', 'c'],
    );
    expect(opensslVerifies(folder, join(work, 'c'), check, value)).toBe(good);
    rmSync(work, { recursive: true });
  });

  it('is renewed by the same command, and devices have nothing to do', async () => {
    const authority = text('authority.crt');
    const before = new X509Certificate(text('service.crt'));
    const again = await makeCertificate(dataFolder, 'studio.local', 'other.local');
    expect(again.code, again.err).toBe(0);
    expect(again.out).toContain('have nothing to do');
    expect(text('authority.crt')).toBe(authority);
    const after = new X509Certificate(text('service.crt'));
    expect(after.serialNumber).not.toBe(before.serialNumber);
    expect(after.checkHost('other.local')).toBe('other.local');
    expect(after.verify(new X509Certificate(authority).publicKey)).toBe(true);
  });

  it.each([
    ['https://studio.local', /is no host name and no address/],
    ['studio_local', /is no host name and no address/],
    ['bank.example', /may not vouch for bank\.example/],
    ['203.0.113.7', /may not vouch for 203\.0\.113\.7/],
  ])('is not made for %s, and the one there stays', async (name, words) => {
    const before = text('service.crt');
    const refused = await makeCertificate(dataFolder, name);
    expect([refused.code, refused.err]).toEqual([1, expect.stringMatching(words)]);
    expect(refused.err).not.toMatch(/\bat .*\.js:/);
    expect(text('service.crt')).toBe(before);
  });

  it('is not made with half an authority', async () => {
    const half = mkdtempSync(join(tmpdir(), 'lotward-test-'));
    cpSync(folder, join(half, 'tls'), { recursive: true });
    rmSync(join(half, 'tls', 'authority.key'));
    const refused = await makeCertificate(half, 'studio.local');
    expect([refused.code, refused.err]).toEqual([1, expect.stringMatching(/belong together/)]);
    rmSync(half, { recursive: true });
  });
});

describe('a certificate that was given', () => {
  const dataFolder = mkdtempSync(join(tmpdir(), 'lotward-test-'));
  const other = mkdtempSync(join(tmpdir(), 'lotward-test-'));
  const files = (certificate: string, key: string) => ({
    TLS_CERTIFICATE_FILE: join(dataFolder, 'tls', certificate),
    TLS_KEY_FILE: join(dataFolder, 'tls', key),
  });
  beforeAll(async () => {
    expect((await makeCertificate(dataFolder, 'studio.local')).code).toBe(0);
    expect((await makeCertificate(other, 'studio.local')).code).toBe(0);
    const inFolder = (name: string) => join(dataFolder, 'tls', name);
    cpSync(join(other, 'tls', 'service.key'), inFolder('other.key'));
    writeFileSync(inFolder('garbage.pem'), 'no certificate');
    const algorithm = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' };
    const keys = await crypto.subtle.generateKey(algorithm, true, ['sign', 'verify']);
    const expired = await X509CertificateGenerator.createSelfSigned({
      name: 'CN=expired',
      keys,
      notBefore: new Date(Date.now() - 2 * dayMilliseconds),
      notAfter: new Date(Date.now() - dayMilliseconds),
      signingAlgorithm: algorithm,
    });
    writeFileSync(inFolder('expired.crt'), expired.toString('pem'));
  });
  afterAll(() => {
    for (const folder of [dataFolder, other]) rmSync(folder, { recursive: true, force: true });
  });

  it.each([
    [
      'is not there',
      files('none.crt', 'none.key'),
      [/certificate .*none\.crt cannot be read/, /key .*none\.key cannot be read/],
    ],
    ['is none', files('garbage.pem', 'garbage.pem'), [/not in PEM form/, /not a private key in PEM form/]],
    ['has another key', files('service.crt', 'other.key'), [/other\.key does not belong to .*service\.crt/]],
    [
      'is mistaken for the key',
      files('service.key', 'service.crt'),
      [/not in PEM form/, /not a private key/],
    ],
  ])(
    'keeps the service from starting when it %s, and says all that is wrong',
    async (_, environment, words) => {
      const failure = await startInFolder(dataFolder, { ...environment, LOG_LEVEL: 'loud' }).catch(String);
      expect(failure).toEqual(expect.any(String));
      for (const each of [...words, /LOG_LEVEL is "loud"/]) expect(failure).toMatch(each);
      expect(failure).not.toMatch(/\bat .*\.js:/);
    },
  );

  it('keeps the service from starting when it has expired', async () => {
    const failure = await startInFolder(dataFolder, files('expired.crt', 'service.key')).catch(String);
    expect(failure).toMatch(/expired\.crt expired on \d{4}-\d\d-\d\d: put a new one there/);
  });
});

describe('a service that is open to the network', () => {
  const start = async (environment: Record<string, string>, certificate = false) => {
    const dataFolder = mkdtempSync(join(tmpdir(), 'lotward-test-'));
    if (certificate) expect((await makeCertificate(dataFolder, 'studio.local')).code).toBe(0);
    const service = await startInFolder(dataFolder, environment);
    const ended = new Promise((resolve) => service.child.once('exit', resolve));
    service.child.kill('SIGTERM');
    await ended;
    rmSync(dataFolder, { recursive: true, force: true });
    return service.log.join('');
  };

  it('says so on the console when it is not encrypted, and what to do', async () => {
    const log = await start({ HOST: '0.0.0.0' });
    expect(log).toMatch(/TAKE CARE: .*NOT ENCRYPTED/);
    expect(log).toMatch(/make-local-certificate/);
  });

  it('says nothing of the kind when it is', async () => {
    const log = await start({ HOST: '0.0.0.0', PUBLIC_URL: 'https://studio.local:3000' }, true);
    expect(log).not.toMatch(/NOT ENCRYPTED/);
    expect(log).not.toMatch(/TAKE CARE/);
  });

  it('says when the certificate does not name where people are sent', async () => {
    const log = await start({ HOST: '0.0.0.0', PUBLIC_URL: 'https://other.local:3000' }, true);
    expect(log).toMatch(/TAKE CARE: The certificate is for .*studio\.local.*https:\/\/other\.local:3000/);
  });
});
