import { readSymbol } from '../../catalogue/catalogue.requests.js';
import { isProblem } from '../../service/problem.js';
import { containerOfLabel, lotsOfCode, productsOfText } from './find.requests.js';

/** What was scanned or typed: the page that shows it, and what that page is to look for. */
export type Found =
  | { page: 'container'; id: string }
  | { page: 'lot'; id: string }
  | { page: 'lots'; query: { code: string } | { product: string } }
  | { page: 'levels'; text: string }
  | { page: 'nothing' };

/** The longest that the service takes as a code of a lot and as words of a name. */
const longestCode = 60;
const longestText = 100;

/**
 * Finds what a scanner sent or a person typed: the studio's own label, else a lot by its code, else a product by its
 * symbol or by words of its name.
 * @throws ServiceProblem when the service cannot be asked
 */
export async function findThing(studioId: string, text: string): Promise<Found> {
  const { labelCode, lotCode, product, kind } = await readSymbol(studioId, text);
  const typed = text.trim();
  if (labelCode !== null) {
    const container = await labelled(studioId, labelCode);
    if (container !== undefined) return { page: 'container', id: container.id };
  }
  const code = lotCode ?? (kind === 'gs1' ? null : typed);
  if (code !== null && code.length <= longestCode) {
    const { items, next } = await lotsOfCode(studioId, code, product?.id);
    const [lot] = items;
    if (lot) return next === null ? { page: 'lot', id: lot.id } : { page: 'lots', query: { code } };
  }
  if (product !== null) return { page: 'lots', query: { product: product.id } };
  if (kind === 'gs1' || typed.length > longestText) return { page: 'nothing' };
  const { items, next } = await productsOfText(studioId, typed);
  const [named] = items;
  if (!named) return { page: 'nothing' };
  return next === null ? { page: 'lots', query: { product: named.id } } : { page: 'levels', text: typed };
}

/** A lot code may look like a label by chance; then nothing carries it. */
async function labelled(studioId: string, code: string) {
  try {
    return await containerOfLabel(studioId, code);
  } catch (error) {
    if (isProblem(error, 'not-found')) return undefined;
    throw error;
  }
}
