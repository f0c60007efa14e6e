import { createDecipheriv, createECDH, createHmac, createPublicKey, verify } from 'node:crypto';
import nock from 'nock';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { Clock } from '../../../platform/clock.js';
import { readConfig } from '../../../platform/config.js';
import type { ServiceKey } from '../../../platform/encryption/service-key.service.js';
import { isP256Point } from '../../../platform/p256-point.js';
import type { ChannelMessage } from '../channel-message.js';
import { SendFailure } from '../send-failure.js';
import { PushChannel } from './push-channel.service.js';
import { PushKeys } from './push-keys.service.js';

const hmac = (key: Buffer, ...parts: (Buffer | string)[]): Buffer => {
  const digest = createHmac('sha256', key);
  for (const part of parts) digest.update(part);
  return digest.digest();
};
const one = Buffer.from([1]);

/** The browser's side, written from RFC 8291, 3.4 and RFC 8188, 2.1 [S]. */
function decrypted(body: Buffer, privateKey: Buffer, auth: Buffer): string {
  const browser = createECDH('prime256v1');
  browser.setPrivateKey(privateKey);
  const salt = body.subarray(0, 16);
  const keyLength = body.readUInt8(20);
  const sender = body.subarray(21, 21 + keyLength);
  const record = body.subarray(21 + keyLength);
  expect(record.length).toBeLessThanOrEqual(body.readUInt32BE(16));
  const keyInfo = Buffer.concat([Buffer.from('WebPush: info\0'), browser.getPublicKey(), sender]);
  const input = hmac(hmac(auth, browser.computeSecret(sender)), keyInfo, one);
  const pseudoRandom = hmac(salt, input);
  const key = hmac(pseudoRandom, 'Content-Encoding: aes128gcm\0', one).subarray(0, 16);
  const nonce = hmac(pseudoRandom, 'Content-Encoding: nonce\0', one).subarray(0, 12);
  const decipher = createDecipheriv('aes-128-gcm', key, nonce).setAuthTag(record.subarray(-16));
  const plain = Buffer.concat([decipher.update(record.subarray(0, -16)), decipher.final()]);
  // The last record ends with the delimiter 2 and zeros.
  const end = plain.lastIndexOf(2);
  expect(plain.subarray(end + 1).every((byte) => byte === 0)).toBe(true);
  return plain.subarray(0, end).toString('utf8');
}

const serviceKey = (secret: string) =>
  ({
    digest: async (purpose: string, text: string) => hmac(Buffer.from(secret), `${purpose}\n${text}`),
  }) as ServiceKey;
const keys = new PushKeys(serviceKey('one'));
const config = readConfig({ PUBLIC_URL: 'https://lotward.studio.example' });
const channel = new PushChannel(config, new Clock(), keys);
const browser = createECDH('prime256v1');
browser.generateKeys();
const auth = Buffer.from('0123456789abcdef');
const endpoint = 'https://push.example/send/abc?x=1';
const settings = {
  name: 'Desk',
  endpoint,
  p256dh: browser.getPublicKey('base64url'),
  auth: auth.toString('base64url'),
};
const message: ChannelMessage = {
  deliveryId: '0197aaaa-0000-7000-8000-000000000001',
  event: 'opened',
  studio: { id: 's1', name: 'Studio Größe' },
  occurredAt: '2026-11-26T06:00:00.000Z',
  severity: 'urgent',
  title: 'Recall open: Umber recall',
  parts: [
    { heading: null, lines: ['Lots here that are affected: 2.'] },
    { heading: 'What to do next', lines: ['Stop using them.', 'The label comes first.'] },
  ],
  link: 'https://lotward.studio.example/studios/s1/recalls/r1',
  alert: { id: 'a1', kind: 'recall open', subjectKind: 'recall', subjectId: 'r1', facts: {}, closedAt: null },
};

interface Posted {
  headers: Record<string, string>;
  body: Buffer;
}

/** Sends and returns what the push service got. */
async function posted(
  sent: ChannelMessage,
  status = 201,
  answered: Record<string, string> = {},
): Promise<Posted> {
  let got: Posted | undefined;
  nock('https://push.example')
    .post('/send/abc?x=1')
    .reply(function (_uri, body) {
      got = {
        headers: this.req.headers as unknown as Record<string, string>,
        body: Buffer.from(String(body), 'hex'),
      };
      return [status, '', answered];
    });
  await channel.send(sent, settings);
  if (!got) throw new Error('Nothing came.');
  return got;
}

describe('a push message', () => {
  beforeAll(() => {
    if (!nock.isActive()) nock.activate();
    nock.disableNetConnect();
  });
  afterEach(() => nock.cleanAll());
  afterAll(() => {
    nock.enableNetConnect();
    nock.restore();
  });

  /** RFC 8291, 5 and appendix A, as quoted in many copies [S]: so that the reader below is right. */
  it('of the published example is read here as it stands there', () => {
    const body =
      'DGv6ra1nlYgDCS1FRnbzlwAAEABBBP4z9KsN6nGRTbVYI_c7VJSPQTBtkgcy27mlmlMoZIIgDll6e3vCYLocInmYWAmS6TlzAC8wEqKK6PBru3jl7A_yl95bQpu6cVPTpK4Mqgkf1CXztLVBSt2Ks3oZwbuwXPXLWyouBWLVWGNWQexSgSxsj_Qulcy4a-fN';
    const privateKey = Buffer.from('q1dXpw3UpT5VOmu_cf_v6ih07Aems3njxI-JWgLcM94', 'base64url');
    const secret = Buffer.from('BTBZMqHH6r4Tts7J_aSIgg', 'base64url');
    expect(decrypted(Buffer.from(body, 'base64url'), privateKey, secret)).toBe(
      'When I grow up, I want to be a watermelon',
    );
  });

  it('is read by its browser alone, small, and short-lived', async () => {
    const { headers, body } = await posted(message);
    expect(JSON.parse(decrypted(body, browser.getPrivateKey(), auth))).toEqual({
      title: 'Recall open: Umber recall',
      body: 'Studio Größe: Lots here that are affected: 2.\nStop using them.',
      link: 'https://lotward.studio.example/studios/s1/recalls/r1',
      tag: 'a1',
    });
    const other = createECDH('prime256v1');
    other.generateKeys();
    expect(() => decrypted(body, other.getPrivateKey(), auth)).toThrow();
    expect(headers).toMatchObject({
      'content-encoding': 'aes128gcm',
      ttl: '86400',
      urgency: 'high',
      topic: expect.stringMatching(/^[A-Za-z0-9_-]{32}$/),
    });
    expect(headers.topic).not.toContain('a1');
    expect(body.length).toBeLessThan(4_096);
  });

  /** RFC 8292, 2 and 3 [M]: a JWT by ES256 for the origin of the push service, valid for a day at most, with the key. */
  it('says which service sends it, signed', async () => {
    const { headers } = await posted({ ...message, severity: 'notice' });
    expect(headers.urgency).toBe('normal');
    const { publicKey } = await keys.pair();
    const [, token = '', key] = /^vapid t=([^,]+), ?k=(.+)$/.exec(headers.authorization ?? '') ?? [];
    expect(key).toBe(publicKey);
    const [head = '', claims = '', signature = ''] = token.split('.');
    const point = Buffer.from(publicKey, 'base64url');
    const signer = createPublicKey({
      format: 'jwk',
      key: {
        kty: 'EC',
        crv: 'P-256',
        x: point.subarray(1, 33).toString('base64url'),
        y: point.subarray(33).toString('base64url'),
      },
    });
    const signed = verify(
      'sha256',
      Buffer.from(`${head}.${claims}`),
      { key: signer, dsaEncoding: 'ieee-p1363' },
      Buffer.from(signature, 'base64url'),
    );
    expect(signed).toBe(true);
    const read = (part: string) => JSON.parse(Buffer.from(part, 'base64url').toString('utf8'));
    expect(read(head)).toMatchObject({ alg: 'ES256' });
    const { aud, sub, exp } = read(claims);
    expect([aud, sub]).toEqual(['https://push.example', 'https://lotward.studio.example']);
    const seconds = exp - Date.now() / 1_000;
    expect(seconds).toBeGreaterThan(60);
    expect(seconds).toBeLessThanOrEqual(86_400);
  });

  it('stays small whatever it tells', async () => {
    const { body } = await posted({
      ...message,
      title: '😀'.repeat(500),
      parts: [{ heading: null, lines: ['名'.repeat(5_000)] }],
    });
    expect(body.length).toBeLessThan(4_096);
    const { title, body: text } = JSON.parse(decrypted(body, browser.getPrivateKey(), auth));
    expect([...title].length).toBeLessThanOrEqual(120);
    expect([...text].length).toBeLessThanOrEqual(400);
  });

  it.each([
    [404, { isGone: true }],
    [410, { isGone: true }],
    [413, { isLasting: true }],
    [429, { isLasting: false, retryAt: expect.stringMatching(/Z$/) }],
    [500, { isLasting: false }],
  ])('that is answered %i failed: %j', async (status, failure) => {
    const sent = posted(message, status, { 'retry-after': '30' });
    await expect(sent).rejects.toThrow(SendFailure);
    await expect(sent).rejects.toMatchObject(failure);
  });
});

describe('the key of the service for push services', () => {
  it('is the same whenever it is asked for, another for another service, and a point of the curve', async () => {
    const { publicKey, privateKey } = await keys.pair();
    expect(await new PushKeys(serviceKey('one')).pair()).toEqual({ publicKey, privateKey });
    expect((await new PushKeys(serviceKey('two')).pair()).publicKey).not.toBe(publicKey);
    expect(isP256Point(publicKey)).toBe(true);
  });
});

describe('the key of a browser', () => {
  it('is a point of the curve, uncompressed', () => {
    const point = browser.getPublicKey();
    expect(isP256Point(point.toString('base64url'))).toBe(true);
    const off = Buffer.from(point);
    off.writeUInt8(off.readUInt8(64) ^ 1, 64);
    for (const bytes of [
      off,
      browser.getPublicKey(null, 'compressed'),
      Buffer.alloc(65),
      point.subarray(1),
      Buffer.alloc(65, 4),
    ])
      expect(isP256Point(bytes.toString('base64url'))).toBe(false);
    for (const text of [
      undefined,
      '',
      'x'.repeat(87),
      `${point.toString('base64url')}!`,
      point.toString('hex'),
    ])
      expect(isP256Point(text)).toBe(false);
  });
});
