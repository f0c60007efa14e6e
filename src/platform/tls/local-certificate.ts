import 'reflect-metadata';
import { webcrypto } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { isIP } from 'node:net';
import { join } from 'node:path';
import {
  AuthorityKeyIdentifierExtension,
  BasicConstraintsExtension,
  ExtendedKeyUsage,
  ExtendedKeyUsageExtension,
  Extension,
  KeyUsageFlags,
  KeyUsagesExtension,
  PemConverter,
  SubjectAlternativeNameExtension,
  SubjectKeyIdentifierExtension,
  X509Certificate,
  X509CertificateGenerator,
} from '@peculiar/x509';
import { OperatorError } from '../operator-error.js';
import { encodeNameConstraints, permitsName } from './name-constraints.js';

const algorithm = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' } as const;
const nameConstraintsId = '2.5.29.30';
const dayMilliseconds = 86_400_000;
const authorityDays = 3_650;
/** Browsers take no certificate of a server that is valid for more than 398 days. */
const certificateDays = 397;
const longestCommonName = 64;
/** A phone whose clock is a little behind takes it too. */
const validSinceMilliseconds = 3_600_000;

/** Names and addresses that nobody has in the public net; for them the authority may always vouch. */
const privateSubtrees = [
  'localhost',
  'local',
  'lan',
  'home.arpa',
  'internal',
  '127.0.0.0/8',
  '10.0.0.0/8',
  '172.16.0.0/12',
  '192.168.0.0/16',
  '169.254.0.0/16',
  '::1/128',
  'fc00::/7',
  'fe80::/10',
];

/** The files below the folder of the local certificate. */
export const localTlsFiles = {
  authority: 'authority.crt',
  authorityKey: 'authority.key',
  certificate: 'service.crt',
  key: 'service.key',
};

export interface MadeCertificate {
  /** Whether devices that trusted the authority before have nothing to do. */
  authorityIsNew: boolean;
  authorityFile: string;
  /** SHA-256, pairs of digits separated by colons. */
  authorityFingerprint: string;
  names: string[];
  validUntil: Date;
}

interface Authority {
  certificate: X509Certificate;
  key: webcrypto.CryptoKey;
}

/**
 * Makes a certificate for the service, signed by a local authority that is made the first time and used again after.
 * @param folder where both lie; made when it is missing
 * @param names host names and addresses the service is reached by
 * @throws OperatorError
 */
export async function makeLocalCertificate(
  folder: string,
  names: readonly string[],
  machineName: string,
): Promise<MadeCertificate> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const found = await readAuthority(folder);
  const authority = found ?? (await makeAuthority(folder, names, machineName));
  refuseNamesBeyond(authority.certificate, names, folder);
  const certificate = await makeCertificate(authority, names, folder);
  return {
    authorityIsNew: found === undefined,
    authorityFile: join(folder, localTlsFiles.authority),
    authorityFingerprint: await fingerprintOf(authority.certificate),
    names: [...names],
    validUntil: certificate.notAfter,
  };
}

async function readAuthority(folder: string): Promise<Authority | undefined> {
  const file = join(folder, localTlsFiles.authority);
  const keyFile = join(folder, localTlsFiles.authorityKey);
  if (!existsSync(file) && !existsSync(keyFile)) return undefined;
  try {
    const certificate = new X509Certificate(readFileSync(file, 'utf8'));
    const key = await webcrypto.subtle.importKey(
      'pkcs8',
      PemConverter.decodeFirst(readFileSync(keyFile, 'utf8')),
      algorithm,
      false,
      ['sign'],
    );
    if (certificate.notAfter > new Date()) return { certificate, key };
  } catch {
    throw new OperatorError(
      `The local authority in ${folder} cannot be read: ${localTlsFiles.authority} and ${localTlsFiles.authorityKey} belong together. Put both back, or take both away; then a new authority is made, which every device has to trust anew.`,
    );
  }
  throw new OperatorError(
    `The local authority in ${folder} has expired. Take ${localTlsFiles.authority} and ${localTlsFiles.authorityKey} away; then a new one is made, which every device has to trust anew.`,
  );
}

async function makeAuthority(
  folder: string,
  names: readonly string[],
  machineName: string,
): Promise<Authority> {
  const keys = await makeKeys();
  const notBefore = new Date(Date.now() - validSinceMilliseconds);
  const always = encodeNameConstraints(privateSubtrees);
  const further = [machineName, ...names].filter((name) => !permitsName(always, name));
  const constraints = encodeNameConstraints([...privateSubtrees, ...new Set(further)]);
  const certificate = await X509CertificateGenerator.createSelfSigned({
    name: [{ CN: [`Lotward local authority of ${machineName}`.slice(0, longestCommonName)] }],
    keys,
    signingAlgorithm: algorithm,
    notBefore,
    notAfter: new Date(notBefore.getTime() + authorityDays * dayMilliseconds),
    extensions: [
      // No further authorities below it.
      new BasicConstraintsExtension(true, 0, true),
      new KeyUsagesExtension(KeyUsageFlags.keyCertSign | KeyUsageFlags.cRLSign, true),
      new Extension(nameConstraintsId, true, constraints),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  await writeKey(join(folder, localTlsFiles.authorityKey), keys.privateKey);
  writeWhole(join(folder, localTlsFiles.authority), `${certificate.toString('pem')}\n`, 0o644);
  return { certificate, key: keys.privateKey };
}

function refuseNamesBeyond(authority: X509Certificate, names: readonly string[], folder: string): void {
  const constraints = authority.getExtension(nameConstraintsId)?.value;
  const beyond = names.filter(
    (name) => constraints === undefined || !permitsName(Buffer.from(constraints), name),
  );
  if (beyond.length === 0) return;
  throw new OperatorError(
    `The local authority in ${folder} may not vouch for ${beyond.join(', ')}: only for private names and addresses, and for those it was made with. Leave that out, or take ${localTlsFiles.authority} and ${localTlsFiles.authorityKey} away; then a new authority is made, which every device has to trust anew.`,
  );
}

async function makeCertificate(
  authority: Authority,
  names: readonly string[],
  folder: string,
): Promise<X509Certificate> {
  const keys = await makeKeys();
  const notBefore = new Date(Date.now() - validSinceMilliseconds);
  const notAfter = new Date(notBefore.getTime() + certificateDays * dayMilliseconds);
  const certificate = await X509CertificateGenerator.create({
    subject: [{ CN: ['Lotward'] }],
    issuer: authority.certificate.subjectName,
    publicKey: keys.publicKey,
    signingKey: authority.key,
    signingAlgorithm: algorithm,
    notBefore,
    notAfter: notAfter < authority.certificate.notAfter ? notAfter : authority.certificate.notAfter,
    extensions: [
      new BasicConstraintsExtension(false, undefined, true),
      new KeyUsagesExtension(KeyUsageFlags.digitalSignature, true),
      new ExtendedKeyUsageExtension([ExtendedKeyUsage.serverAuth]),
      new SubjectAlternativeNameExtension(
        names.map((name) => ({ type: isIP(name) === 0 ? 'dns' : 'ip', value: name })),
      ),
      await SubjectKeyIdentifierExtension.create(keys.publicKey),
      await AuthorityKeyIdentifierExtension.create(authority.certificate.publicKey),
    ],
  });
  await writeKey(join(folder, localTlsFiles.key), keys.privateKey);
  writeWhole(join(folder, localTlsFiles.certificate), `${certificate.toString('pem')}\n`, 0o644);
  return certificate;
}

function makeKeys(): Promise<webcrypto.CryptoKeyPair> {
  return webcrypto.subtle.generateKey(algorithm, true, ['sign', 'verify']);
}

async function writeKey(file: string, key: webcrypto.CryptoKey): Promise<void> {
  const pem = PemConverter.encode(await webcrypto.subtle.exportKey('pkcs8', key), 'PRIVATE KEY');
  writeWhole(file, `${pem}\n`, 0o600);
}

/** Whoever reads the file meanwhile, or is interrupted, finds the old one or the new one. */
function writeWhole(file: string, text: string, mode: number): void {
  const unfinished = `${file}.${process.pid}`;
  writeFileSync(unfinished, text, { mode });
  renameSync(unfinished, file);
}

async function fingerprintOf(certificate: X509Certificate): Promise<string> {
  const digest = Buffer.from(await certificate.getThumbprint('SHA-256'));
  return (digest.toString('hex').toUpperCase().match(/../g) ?? []).join(':');
}
