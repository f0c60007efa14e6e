import { type LookupAddress, lookup } from 'node:dns';
import http from 'node:http';
import https from 'node:https';
import { isIP, type LookupFunction } from 'node:net';
import { type AddressRange, whereabouts } from './outgoing-addresses.js';

/** What a request to somebody else's server may take. */
export interface OutgoingLimits {
  /** Until the connection stands, encryption included. */
  connectMilliseconds: number;
  /** From then until the answer begins. */
  answerMilliseconds: number;
  /** For all of it. */
  wholeMilliseconds: number;
  /** What is read of the answer's body; the rest is left. */
  bodyBytes: number;
}

export const outgoingLimits: OutgoingLimits = {
  connectMilliseconds: 10_000,
  answerMilliseconds: 20_000,
  wholeMilliseconds: 30_000,
  bodyBytes: 4_096,
};

export interface OutgoingRequest {
  url: string;
  headers: Readonly<Record<string, string>>;
  body: Buffer;
}

export interface OutgoingAnswer {
  status: number;
  headers: http.IncomingHttpHeaders;
  /** The beginning of the body, as UTF-8. */
  body: string;
}

/** Finds the addresses of a name, all of them. */
export type Resolve = (host: string) => Promise<LookupAddress[]>;

/** How outgoing requests are made. */
export interface OutgoingRules {
  /** Addresses that are not on the open internet and may be called all the same. */
  allowed: readonly AddressRange[];
  limits?: OutgoingLimits;
  resolve?: Resolve;
}

/** The written address is none that the service calls; it will be refused again until it is written otherwise. */
export class OutgoingRefusal extends Error {}

/**
 * It did not come to an answer; it may another time, as when a name leads inside now, which whoever answers for names may
 * have done for a minute only. The message shows no part of the address.
 */
export class OutgoingFailure extends Error {}

const longestUrl = 2_000;
const maximumHeaderBytes = 16_384;
const inside =
  'leads to an address that is not on the open internet. Whoever runs the service can allow it with OUTGOING_PRIVATE_ADDRESSES';

/**
 * What is wrong with an address that the service is to send to, as far as the text shows it; null: nothing. What a name
 * leads to is found out when it is called.
 */
export function outgoingUrlFault(text: string, allowed: readonly AddressRange[]): string | null {
  if (text.length > longestUrl) return `has ${text.length} characters: at most ${longestUrl} are taken`;
  // The reader of addresses would pass over spaces and ends of lines, and a person would not see it.
  if (/[\s\p{Cc}]/u.test(text) || !URL.canParse(text)) {
    return 'is no address: one such as https://desk.example/alerts is expected';
  }
  const url = new URL(text);
  if (url.protocol !== 'https:' && url.protocol !== 'http:') return 'must begin with https://';
  if (url.username !== '' || url.password !== '') {
    return 'holds a name or a password: leave them out, each message is signed';
  }
  if (url.hash !== '') return 'has a part after #, which is never sent: leave it out';
  const literal = literalOf(url);
  if (literal !== null && whereabouts(literal, allowed) === 'refused') return inside;
  if (literal === null && /(^|\.)localhost\.?$/.test(url.hostname) && allowed.length === 0) return inside;
  if (url.protocol === 'https:') return null;
  const mayBeInside =
    literal === null ? allowed.length > 0 : whereabouts(literal, allowed) === 'allowed here';
  return mayBeInside ? null : 'must begin with https://, so that nobody on the way can read it';
}

/**
 * Posts to somebody else's server, once. Guarantees: it calls only addresses of the open internet and those that are
 * allowed, judged on the very addresses the connection is made to; it sends without encryption to allowed ones only; it
 * follows no redirection; it ends within its limits, however the answer comes, and keeps no connection.
 * @throws OutgoingRefusal, OutgoingFailure
 */
export function sendOutgoing(
  { url: text, headers, body }: OutgoingRequest,
  { allowed, limits = outgoingLimits, resolve = resolveAll }: OutgoingRules,
): Promise<OutgoingAnswer> {
  const fault = outgoingUrlFault(text, allowed);
  if (fault !== null) return Promise.reject(new OutgoingRefusal(`The address ${fault}.`));
  const url = new URL(text);
  return new Promise((answered, failed) => {
    const request = (url.protocol === 'https:' ? https : http).request(url, {
      method: 'POST',
      headers: { 'user-agent': 'lotward', ...headers, 'content-length': body.length },
      // A connection of its own, closed with the answer.
      agent: false,
      maxHeaderSize: maximumHeaderBytes,
      lookup: judgedLookup(allowed, url.protocol === 'http:', resolve),
    });
    const timers: NodeJS.Timeout[] = [];
    const begun = performance.now();
    const within = (milliseconds: number, what: string): NodeJS.Timeout => {
      const timer = setTimeout(
        () => fail(new OutgoingFailure(`It ${what} within ${milliseconds / 1_000} s.`)),
        milliseconds,
      );
      timers.push(timer);
      return timer;
    };
    const end = (): void => {
      for (const timer of timers) clearTimeout(timer);
      request.destroy();
    };
    const fail = (error: Error): void => {
      end();
      failed(error);
    };
    within(limits.wholeMilliseconds, 'did not come to an end');
    const connecting = within(limits.connectMilliseconds, 'could not be connected to');
    request.once('socket', (socket) => {
      socket.once(url.protocol === 'https:' ? 'secureConnect' : 'connect', () => {
        clearTimeout(connecting);
        within(limits.answerMilliseconds, 'did not answer');
      });
    });
    request.on('error', (error) => fail(failureOf(error)));
    // Nothing else than an answer was asked for.
    request.once('upgrade', () => fail(new OutgoingFailure('It changed to another protocol.')));
    request.once('response', (response) => {
      for (const timer of timers) clearTimeout(timer);
      const read: Buffer[] = [];
      let bytes = 0;
      const answer = (): void => {
        const { statusCode: status = 0, headers: answeredHeaders } = response;
        const beginning = Buffer.concat(read).subarray(0, limits.bodyBytes).toString('utf8');
        end();
        answered({ status, headers: answeredHeaders, body: beginning });
      };
      // The status is the answer: a body that breaks off or never ends takes nothing from it.
      const left = limits.wholeMilliseconds - (performance.now() - begun);
      timers.push(setTimeout(answer, Math.min(limits.answerMilliseconds, left)));
      response.on('data', (chunk: Buffer) => {
        bytes += chunk.length;
        read.push(chunk);
        if (bytes > limits.bodyBytes) answer();
      });
      response.once('close', answer);
      response.on('error', answer);
    });
    request.end(body);
  });
}

function literalOf({ hostname }: URL): string | null {
  const address = hostname.replace(/^\[|\]$/g, '');
  return isIP(address) === 0 ? null : address;
}

const resolveAll: Resolve = (host) =>
  new Promise((resolve, reject) => {
    lookup(host, { all: true }, (error, addresses) => (error ? reject(error) : resolve(addresses)));
  });

/**
 * The look-up a connection is made by. A name of which one address is refused is refused whole: a part of it leads
 * inside on purpose or by a fault.
 * @param onlyInside for what is not encrypted
 */
function judgedLookup(
  allowed: readonly AddressRange[],
  onlyInside: boolean,
  resolve: Resolve,
): LookupFunction {
  return (host, options, done) => {
    resolve(host).then(
      (addresses) => {
        const refusal = refusalOf(addresses, allowed, onlyInside);
        const wanted = addresses.filter(
          ({ family }) => options.family === undefined || options.family === 0 || options.family === family,
        );
        const [first] = wanted;
        if (refusal !== null) done(new OutgoingFailure(refusal), []);
        else if (first === undefined) done(new OutgoingFailure('Its name leads to no address.'), []);
        else if (options.all) done(null, wanted);
        else done(null, first.address, first.family);
      },
      (error: Error) => done(error, []),
    );
  };
}

function refusalOf(
  addresses: readonly LookupAddress[],
  allowed: readonly AddressRange[],
  onlyInside: boolean,
): string | null {
  const places = addresses.map(({ address }) => whereabouts(address, allowed));
  if (places.includes('refused')) return `The address ${inside}.`;
  if (onlyInside && places.includes('internet')) {
    return 'The address must begin with https://, so that nobody on the way can read it.';
  }
  return null;
}

function failureOf(error: Error & { code?: string }): Error {
  if (error instanceof OutgoingRefusal || error instanceof OutgoingFailure) return error;
  return new OutgoingFailure(`It could not be reached (${(error.code ?? error.message).slice(0, 60)}).`);
}
