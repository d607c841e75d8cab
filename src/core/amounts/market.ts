/** Whose ceilings a product keeps to: the European Union's (and the countries that keep its law), or another's. */
export type Market = 'eu' | 'other';
