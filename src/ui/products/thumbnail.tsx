import './products.css';
import { useEffect, useState } from 'preact/hooks';
import type { Product } from '../../core/product/product.ts';
import { PlaceIcon } from '../parts/icon.tsx';
import type { World } from '../world.ts';

const mostFetched = 500; // pictures held at hand
const fetched = new Map<string, string>();

/** Whether pictures are shown at all: the user wants them, and a product has one. */
export const hasPictures = ({ remembered: { settings, products } }: World): boolean =>
  settings.pictures !== false && products.some(({ picture }) => picture);

/** The small picture of a product, fetched when it is shown; where it has none, `always` keeps its room. */
export function Thumbnail(props: { world: World; product: Product | undefined; always?: boolean }) {
  const { world, product, always } = props;
  const key = world.remembered.settings.pictures === false ? undefined : product?.picture;
  const [data, setData] = useState(key && fetched.get(key));
  useEffect(() => {
    setData(key && fetched.get(key));
    if (!key || fetched.has(key)) return;
    let here = true;
    void world.store?.().then(async (store) => {
      const found = await store.photo(key);
      if (!found) return;
      if (fetched.size >= mostFetched) fetched.clear();
      fetched.set(key, found);
      if (here) setData(found);
    });
    return () => {
      here = false;
    };
  }, [key]);
  if (!key && !always) return null;
  return <span class="picture">{data ? <img src={data} alt="" /> : <PlaceIcon place="products" />}</span>;
}
