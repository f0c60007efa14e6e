import { Injectable } from '@nestjs/common';
import { ZxcvbnFactory } from '@zxcvbn-ts/core';
import { adjacencyGraphs, dictionary } from '@zxcvbn-ts/language-common';
import argon2 from 'argon2';
import { Problem } from '../../platform/problem.js';

/**
 * Argon2id with 19 MiB, two passes and one lane: the minimum of OWASP's Password Storage Cheat Sheet [S].
 * RFC 9106 describes the function.
 */
export const argon2Parameters = {
  type: argon2.argon2id,
  memoryCost: 19_456,
  timeCost: 2,
  parallelism: 1,
} as const;

/** OWASP ASVS 5.0, 6.2.1 [P]: at least 8 characters, 15 recommended. */
const fewestCharacters = 12;
export const mostCharacters = 200;
/** Of 0 to 4; from 3 on a guesser with the hash is expected to need more than 10^8 tries. */
const leastScore = 3;
/** Guessing strength is judged on so many characters; more only make it slower. */
const judgedCharacters = 64;

/** Hashes and checks passwords. */
@Injectable()
export class Passwords {
  /** Made for the first password, since its lists take long to read in. */
  private judge: ZxcvbnFactory | undefined;
  private decoy: Promise<string> | undefined;

  /**
   * @param about what a guesser would try first, such as the sign-in name
   * @throws Problem unusable-password
   */
  async hash(password: string, about: readonly string[]): Promise<string> {
    const length = [...password].length;
    if (length < fewestCharacters) {
      throw new Problem(
        400,
        'unusable-password',
        `The password has ${length} characters; at least ${fewestCharacters} are needed. A few words that do not belong together are easy to keep in mind.`,
      );
    }
    this.judge ??= new ZxcvbnFactory({ dictionary, graphs: adjacencyGraphs });
    const { score } = this.judge.check(password.slice(0, judgedCharacters), [...about, 'lotward']);
    if (score < leastScore) {
      throw new Problem(
        400,
        'unusable-password',
        'The password is one that is guessed soon: it is on the lists of common ones, or a pattern. Take a few words that do not belong together.',
      );
    }
    return argon2.hash(normalized(password), argon2Parameters);
  }

  /** Whether it is the password; takes as long when there is none to compare with, so that nobody learns who has an account. */
  async matches(hash: string | null | undefined, password: string): Promise<boolean> {
    if (hash) return argon2.verify(hash, normalized(password));
    this.decoy ??= argon2.hash('a password nobody has', argon2Parameters);
    await argon2.verify(await this.decoy, normalized(password));
    return false;
  }
}

/** Keyboards write the same character in different ways. */
function normalized(password: string): string {
  return password.normalize('NFKC');
}
