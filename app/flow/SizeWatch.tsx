/** Tells the style sheet how large the map is drawn, without rendering a single thing anew. */
import { useEffect } from 'react';
import { useStoreApi } from 'reactflow';
import { levelAt, nameSize, signSize, useLevel } from './levels.ts';

interface Props {
  readonly element: HTMLElement | undefined;
  /** The size below which trays say what they hold in words. */
  readonly folded: number;
}

export function SizeWatch({ element, folded }: Props) {
  const store = useStoreApi();
  useEffect(() => {
    if (!element) return;
    let last: number | undefined;
    const watch = ({ transform }: { transform: readonly [number, number, number] }) => {
      const zoom = transform[2];
      if (zoom === last) return;
      last = zoom;
      const level = levelAt(zoom, folded);
      if (element.dataset['level'] !== level) {
        element.dataset['level'] = level;
        useLevel.setState({ level });
      }
      element.style.setProperty('--name-size', `${nameSize(zoom)}px`);
      element.style.setProperty('--sign-size', `${signSize(zoom)}px`);
    };
    watch(store.getState());
    return store.subscribe(watch);
  }, [element, store, folded]);
  return null;
}
