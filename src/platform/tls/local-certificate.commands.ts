import { isIP } from 'node:net';
import { hostname } from 'node:os';
import { isFQDN } from 'class-validator';
import type { AddCommands } from '../commands.js';
import { readConfig } from '../config.js';
import { inAddress } from '../loopback.js';
import { OperatorError } from '../operator-error.js';
import type { MadeCertificate } from './local-certificate.js';
import { localAddresses, localName } from './own-names.js';

const loopbackNames = ['localhost', '127.0.0.1', '::1'];

function isName(text: string): boolean {
  return isIP(text) !== 0 || isFQDN(text, { require_tld: false, allow_underscores: false });
}

export const addLocalCertificateCommands: AddCommands = (commands) => {
  commands
    .command('make-local-certificate')
    .description(
      'makes a certificate for this service, signed by an authority of your own that your phones and tablets come to trust; run again, it renews the certificate',
    )
    .option(
      '--name <names...>',
      'host names and addresses people reach the service by, the most used first; left out: the name and the addresses of this machine',
    )
    .action(async ({ name: given = [localName(), ...localAddresses()] }: { name?: string[] }) => {
      const wrong = given.filter((name) => !isName(name));
      if (wrong.length > 0) {
        throw new OperatorError(
          `"${wrong.join('", "')}" is no host name and no address. Give them without https:// and port, such as: --name studio.local 192.168.1.20`,
        );
      }
      const config = readConfig(process.env);
      const names = [...new Set([...given.map((name) => name.toLowerCase()), ...loopbackNames])];
      // Loaded here, since what makes certificates would make every other command slower.
      const { makeLocalCertificate } = await import('./local-certificate.js');
      const made = await makeLocalCertificate(config.localTlsFolder, names, hostname().toLowerCase());
      process.stdout.write(words(made, config.PORT));
    });
};

function words(made: MadeCertificate, port: number): string {
  const [first = 'localhost'] = made.names;
  return `A certificate was made for ${made.names.join(', ')}. It is good until ${made.validUntil.toISOString().slice(0, 10)}; then run this command again.

The service takes it up by itself at its next start. For others than this machine, start it with:

  HOST=0.0.0.0
  PUBLIC_URL=https://${inAddress(first)}:${port}

${made.authorityIsNew ? trust(made) : `The authority is the one that was there before: devices that trust it have nothing to do. For a new one:\n\n${trust(made)}`}`;
}

/** The names of menus are those of the systems as of 2025; makers of Android devices change them. */
function trust({ authorityFile, authorityFingerprint }: MadeCertificate): string {
  return `Bring this file, and no other of its folder, to each device, by cable, mail or message, and trust it there once:

  ${authorityFile}
  SHA-256 ${authorityFingerprint}

iPhone, iPad   Open the file; the system says a profile was downloaded. Settings > General > VPN & Device Management:
               choose the profile, Install. Then Settings > General > About > Certificate Trust Settings: switch it on.
Android        Settings > Security & privacy > More security settings > Encryption & credentials > Install a certificate
               > CA certificate: choose the file. Search the settings for "CA certificate" if they are ordered otherwise.
Windows        Open the file > Install Certificate > Current User > Place all certificates in the following store:
               Trusted Root Certification Authorities.
macOS          Open the file in Keychain Access, open the certificate there, Trust: Always Trust.
Linux          Chromium: Settings > Privacy and security > Security > Manage certificates, import as authority.
Firefox        On any system: Settings > Privacy & Security > Certificates > View Certificates > Authorities > Import.

Compare the fingerprint where the device shows it. The authority can vouch only for private names and addresses, and for
those it was made with; its key stays in the folder above, and whoever has it can pretend to be this service.
`;
}
