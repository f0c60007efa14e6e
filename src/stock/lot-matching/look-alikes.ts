/**
 * Letters of other scripts that cannot be told from Latin ones by sight, in the direction of Unicode's table of confusables
 * (UTS #39, confusables.txt [M]; the pair of the small Cyrillic and Latin a is quoted from it [S]).
 */
const latinByLookAlike: Readonly<Record<string, string>> = {
  ...pairs('АВЕЅІЈКМНОРСТХУԚԜԌ', 'ABESIJKMHOPCTXYQWG'),
  ...pairs('аеоорсухіјѕԁһԛԝ', 'aeoopcyxijsdhqw'),
  ...pairs('ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ', 'ABEZHIKMNOPTYX'),
  ...pairs('αινορυ', 'aivopu'),
  ...pairs('օոսԼԱՍ', 'onuLUU'),
};

function pairs(lookAlikes: string, latin: string): Record<string, string> {
  return Object.fromEntries(Array.from(lookAlikes, (letter, index) => [letter, latin.charAt(index)]));
}

/** Text with look-alikes of other scripts written in Latin letters; as many characters as before. */
export function inLatinLetters(text: string): string {
  return text.replace(/[\u0370-\u058f]/g, (letter) => latinByLookAlike[letter] ?? letter);
}

/**
 * Capitals that are taken for digits in print and handwriting: O/0, I and l/1, S/5, B/8 (trade notes [C]); Z/2 and G/6 are
 * named with them where such pairs are collected, for instance at gajus.com "Avoiding visually ambiguous characters in IDs" [S].
 */
const digitByLetter: Readonly<Record<string, string>> = {
  O: '0',
  I: '1',
  L: '1',
  S: '5',
  B: '8',
  Z: '2',
  G: '6',
};

/** Capitals and digits with the letters that look like digits written as those; as many characters as before. */
export function lettersAsDigits(capitals: string): string {
  return capitals.replace(/[OILSBZG|]/g, (letter) =>
    letter === '|' ? '1' : (digitByLetter[letter] ?? letter),
  );
}
