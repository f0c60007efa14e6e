/**
 * Whether a product takes the place of itself, directly or through others.
 *
 * @param replaced by product, the one it takes the place of
 */
export function isReplacedInACircle(replaced: ReadonlyMap<string, string>, productId: string): boolean {
  const seen = new Set<string>();
  for (let each = replaced.get(productId); each !== undefined; each = replaced.get(each)) {
    if (each === productId) return true;
    // A circle of others, which this one only leads into.
    if (seen.has(each)) return false;
    seen.add(each);
  }
  return false;
}
