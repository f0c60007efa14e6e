/** Makes a text from a short name of what it stands for, different in each studio. */
export interface Texts {
  (what: string): string;
  /** What is said of a client, and so is shown to few. */
  ofClient(what: string): string;
}

/** Texts that tell which studio they belong to, and nothing else in the world holds. */
export function markedTexts(mark: string, clientMark = mark): Texts {
  return Object.assign((what: string) => `${mark} ${what}`, {
    ofClient: (what: string) => `${clientMark} ${what}`,
  });
}
