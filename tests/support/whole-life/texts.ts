/** Makes a text from a short name of what it stands for, different in each studio. */
export type Texts = (what: string) => string;

/** Texts that tell which studio they belong to, and nothing else in the world holds. */
export function markedTexts(mark: string): Texts {
  return (what) => `${mark} ${what}`;
}
