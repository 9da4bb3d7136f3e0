/** Tells the style sheet how large the map is drawn, without rendering a single thing anew. */
import { useEffect } from 'react';
import { useStoreApi } from 'reactflow';
import { levelAt, nameSize } from './levels.ts';

export function SizeWatch({ element }: { element: HTMLElement | undefined }) {
  const store = useStoreApi();
  useEffect(() => {
    if (!element) return;
    let last: number | undefined;
    const watch = ({ transform }: { transform: readonly [number, number, number] }) => {
      const zoom = transform[2];
      if (zoom === last) return;
      last = zoom;
      element.dataset['level'] = levelAt(zoom);
      element.style.setProperty('--name-size', `${nameSize(zoom)}px`);
      element.style.setProperty('--small-size', `${12.5 / Math.max(zoom, 0.5)}px`);
    };
    watch(store.getState());
    return store.subscribe(watch);
  }, [element, store]);
  return null;
}
