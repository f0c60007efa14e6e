import type { SymbolView } from '../../../catalogue/symbols.views.js';
import type { TrayLineView } from '../../../sessions/tray.views.js';

/** What a wrapper says, as the service read it. */
export type Wrapper = Pick<SymbolView, 'labelCode' | 'lotCode' | 'text'> & {
  productId: string | null;
};

/** Lines of the tray a wrapper can belong to: by our label, by product and lot, or by a code typed from it. */
export function linesOfWrapper<Line extends Pick<TrayLineView, 'labelCode' | 'productId' | 'lotCode'>>(
  lines: readonly Line[],
  { labelCode, lotCode, productId, text }: Wrapper,
): Line[] {
  if (labelCode !== null) return lines.filter((line) => isSame(line.labelCode, labelCode));
  if (productId !== null) {
    return lines.filter(
      (line) => line.productId === productId && (lotCode === null || isSame(line.lotCode, lotCode)),
    );
  }
  return lines.filter((line) => isSame(line.lotCode, text) || isSame(line.labelCode, text));
}

/** Capitals, blanks and hyphens are written as one likes. */
function isSame(code: string | null, other: string): boolean {
  return code !== null && folded(code) === folded(other);
}

function folded(code: string): string {
  return code.toUpperCase().replace(/[\s-]/g, '');
}
