import type { Good } from './goods.ts';

/** What most shops say of a product to machines, as schema.org JSON-LD; `more` is added to it. */
export const productData = (good: Good, more: object = {}): string =>
  `<script type="application/ld+json">${JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: good.name,
    brand: { '@type': 'Brand', name: good.maker },
    description: good.blurb,
    offers: { '@type': 'Offer', price: good.price, priceCurrency: 'EUR' },
    ...more,
  }).replaceAll('<', '\\u003c')}</script>`;
