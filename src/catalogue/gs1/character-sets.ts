import type { CharacterSetName } from './application-identifier-format.js';

/**
 * The character sets of GS1 element strings, in the order that gives each character its value.
 * GS1 General Specifications, AI encodable character sets [P, by way of the GS1 Barcode Syntax Dictionary].
 */

/** Set 82: no space, no # $ @ [ \ ] ^ ` { | } ~. */
export const characterSet82 =
  '!"%&\'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz';

/** Set 39: component and part identifiers (AI 8010). */
export const characterSet39 = '#-/0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** Set 64: base64url, used by digital signatures (AI 8030); it may end in padding. */
export const characterSet64 = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Set 32: the check character pair; no 0, 1, I or O. */
export const characterSet32 = '23456789ABCDEFGHJKLMNPQRSTUVWXYZ';

const sets: Readonly<Record<CharacterSetName, { characters: ReadonlySet<string>; allowed: string }>> = {
  N: { characters: new Set('0123456789'), allowed: 'digits 0-9' },
  X: {
    characters: new Set(characterSet82),
    allowed: 'letters A-Z a-z, digits and ! " % & \' ( ) * + , - . / : ; < = > ? _ (GS1 character set 82)',
  },
  Y: {
    characters: new Set(characterSet39),
    allowed: 'letters A-Z, digits and # - / (GS1 character set 39)',
  },
  Z: {
    characters: new Set(characterSet64),
    allowed: 'letters A-Z a-z, digits and - _, then at most two = (GS1 character set 64)',
  },
};

/** What a set allows, in words for a message. */
export function allowedCharacters(name: CharacterSetName): string {
  return sets[name].allowed;
}

/**
 * The 0-based place of the first character that the set does not hold, or -1. Padding at the end of set 64 is
 * one or two = that fill the component to a multiple of three characters, as the dictionary's reference check
 * has it [P].
 */
export function findForeignCharacter(text: string, name: CharacterSetName): number {
  const padding = name === 'Z' ? text.length - text.replace(/=+$/, '').length : 0;
  const end = text.length - padding;
  const { characters } = sets[name];
  for (let index = 0; index < end; index++) {
    if (!characters.has(text.charAt(index))) return index;
  }
  const paddingIsWrong = padding > 2 || (padding > 0 && text.length % 3 !== 0);
  return paddingIsWrong ? end : -1;
}
