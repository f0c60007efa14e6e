import { wordsOfProduct } from '../../catalogue/product-words.js';
import { request } from '../../service/request.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';

/** A product of the register by its name; its id until that is known. */
export function useProductNames(studioId: string, productIds: readonly string[]): string[] {
  const { answer } = useAnswer(['names of products', studioId, ...productIds], () =>
    Promise.all(
      productIds.slice(0, mostNamed).map(async (productId) => {
        const product = await request('GET', '/studios/{studioId}/products/{productId}', {
          studioId,
          productId,
        });
        return wordsOfProduct(product);
      }),
    ),
  );
  return answer ?? [];
}

const mostNamed = 20;

export function ProductName({ studioId, productId }: { studioId: string; productId: string }) {
  const texts = useTexts();
  const [name] = useProductNames(studioId, [productId]);
  return name ?? texts.app.loading;
}
