import type { BrowserContext, CDPSession, Page } from 'playwright-core';

/** A credential as Chromium's virtual authenticator keeps it; the private key too. */
export interface HeldCredential {
  credentialId: string;
  isResidentCredential: boolean;
  rpId?: string;
  privateKey: string;
  userHandle?: string;
  signCount: number;
}

/** An answer of the service to a page. */
export interface PageAnswer {
  status: number;
  body: { code?: string; detail?: string } & Record<string, unknown>;
}

/** What the page itself has; tests are compiled without a browser's types. */
declare const PublicKeyCredential: {
  parseCreationOptionsFromJSON(options: unknown): object;
  parseRequestOptionsFromJSON(options: unknown): object;
};
declare const navigator: {
  credentials: Record<'create' | 'get', (asked: { publicKey: object }) => Promise<{ toJSON(): unknown }>>;
};

const options = {
  protocol: 'ctap2',
  transport: 'internal',
  hasResidentKey: true,
  hasUserVerification: true,
  isUserVerified: true,
  automaticPresenceSimulation: true,
} as const;

/**
 * A page of the service in Chromium, with an authenticator that Chromium itself imitates over the DevTools protocol. It is
 * the check of WebAuthn by something not made here: the browser makes what is signed, and refuses what the standard says.
 */
export class PasskeyPage {
  private constructor(
    readonly page: Page,
    private readonly devTools: CDPSession,
    private readonly authenticatorId: string,
  ) {}

  /** @param address a page of the service; its content does not matter */
  static async open(browser: BrowserContext, address: string): Promise<PasskeyPage> {
    const page = await browser.newPage();
    await page.goto(address);
    const devTools = await browser.newCDPSession(page);
    await devTools.send('WebAuthn.enable');
    const { authenticatorId } = await devTools.send('WebAuthn.addVirtualAuthenticator', { options });
    return new PasskeyPage(page, devTools, authenticatorId);
  }

  /** As a script of the page would ask; cookies come along. */
  async ask(method: string, path: string, body?: unknown): Promise<PageAnswer> {
    return this.page.evaluate(
      async (asked) => {
        const response = await fetch(asked.path, {
          method: asked.method,
          ...(asked.body !== undefined && {
            headers: { 'content-type': 'application/json' },
            body: JSON.stringify(asked.body),
          }),
        });
        const text = await response.text();
        return { status: response.status, body: text === '' ? {} : JSON.parse(text) };
      },
      { method, path: `/api/v1${path}`, body },
    );
  }

  /** Lets the browser make a passkey by these options. @returns RegistrationResponseJSON, or the browser's refusal */
  async create(optionsOfService: unknown): Promise<unknown> {
    return this.page.evaluate(async (json) => {
      try {
        const publicKey = PublicKeyCredential.parseCreationOptionsFromJSON(json);
        return (await navigator.credentials.create({ publicKey })).toJSON();
      } catch (error) {
        return (error as Error).name;
      }
    }, optionsOfService);
  }

  /** Lets the browser use a passkey. @returns AuthenticationResponseJSON, or the browser's refusal */
  async use(optionsOfService: unknown): Promise<unknown> {
    return this.page.evaluate(async (json) => {
      try {
        const publicKey = PublicKeyCredential.parseRequestOptionsFromJSON(json);
        return (await navigator.credentials.get({ publicKey })).toJSON();
      } catch (error) {
        return (error as Error).name;
      }
    }, optionsOfService);
  }

  /** Adds a passkey to whoever is signed in. */
  async register(name: string): Promise<PageAnswer> {
    const made = await this.create((await this.ask('POST', '/me/passkeys/options')).body);
    return this.ask('POST', '/me/passkeys', { name, credential: made });
  }

  /** Signs in with a passkey, typing nothing. */
  async signIn(): Promise<PageAnswer> {
    const used = await this.use((await this.ask('POST', '/sign-in/passkey/options')).body);
    return this.ask('POST', '/sign-in/passkey', { credential: used });
  }

  async held(): Promise<HeldCredential[]> {
    const { authenticatorId } = this;
    const { credentials } = await this.devTools.send('WebAuthn.getCredentials', { authenticatorId });
    return credentials;
  }

  /** Puts a credential in, as a thief puts a copy into an authenticator of their own. */
  async put(credential: HeldCredential): Promise<void> {
    const { authenticatorId } = this;
    await this.devTools.send('WebAuthn.addCredential', { authenticatorId, credential });
  }

  /** Puts the counter of the one credential it holds to another number; the next use tells the one after it. */
  async setCounter(counter: number): Promise<void> {
    const [credential, ...others] = await this.held();
    if (!credential || others.length > 0)
      throw new Error(`It holds ${others.length + 1} credentials, or none.`);
    await this.remove(credential.credentialId);
    // The protocol takes a signed number for the unsigned one.
    await this.put({ ...credential, signCount: counter | 0 });
  }

  async remove(credentialId: string): Promise<void> {
    const { authenticatorId } = this;
    await this.devTools.send('WebAuthn.removeCredential', { authenticatorId, credentialId });
  }

  /** Whether the holder proves who they are, by finger or PIN, when the authenticator asks. */
  async setUserVerified(isUserVerified: boolean): Promise<void> {
    const { authenticatorId } = this;
    await this.devTools.send('WebAuthn.setUserVerified', { authenticatorId, isUserVerified });
  }

  /** Lets the authenticator say that it did not verify its holder, whatever happened. */
  async setBadVerification(isBadUV: boolean): Promise<void> {
    const { authenticatorId } = this;
    await this.devTools.send('WebAuthn.setResponseOverrideBits', { authenticatorId, isBadUV });
  }

  /** Lets the authenticator sign wrongly. */
  async setBogusSignature(isBogusSignature: boolean): Promise<void> {
    const { authenticatorId } = this;
    await this.devTools.send('WebAuthn.setResponseOverrideBits', { authenticatorId, isBogusSignature });
  }
}
