import type { Greenhouse, StockItem } from './greenhouse.ts';

/** Products that every household has, by what they do. */
export type CommonProduct = 'ph-up' | 'ph-down' | 'nutrient-a' | 'nutrient-b';

/** The stock's item for a common product: of that name, or the one that ends like it (`grow-a`). */
export function stockItemFor(common: CommonProduct, stock: Greenhouse['stock']): StockItem | null {
  const named = stock.find(({ product }) => product === common);
  if (named) return named;
  const ending = lastWord(common);
  const alike = stock.filter(({ product }) => lastWord(product) === ending);
  return alike.length === 1 ? (alike[0] ?? null) : null;
}

function lastWord(product: string): string | undefined {
  return product.toLowerCase().split(/[-_ ]/).at(-1);
}
