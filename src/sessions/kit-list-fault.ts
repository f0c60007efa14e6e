/** One line of a kit list as it is given. */
export interface KitLine {
  productId: string | null;
  /** Key of a configuration. */
  configuration: string | null;
}

export interface KitLineFault {
  /** Which line, counted from 0. */
  index: number;
  /** In words for a person, who counts lines from 1. */
  message: string;
}

/**
 * The first line that a kit list cannot have: one that names nothing or two things, or what an earlier line names.
 *
 * @returns null when there is none
 */
export function kitListFault(lines: readonly KitLine[]): KitLineFault | null {
  const seen = new Set<string>();
  for (const [index, { productId, configuration }] of lines.entries()) {
    const named = productId ?? configuration;
    if (named === null || (productId !== null && configuration !== null)) {
      const names =
        named === null ? 'neither a product nor a configuration' : 'both a product and a configuration';
      return { index, message: `Line ${index + 1} names ${names}. Name exactly one.` };
    }
    if (seen.has(named)) {
      const message = `Line ${index + 1} names what an earlier line names. Put it on one line with the whole quantity.`;
      return { index, message };
    }
    seen.add(named);
  }
  return null;
}
