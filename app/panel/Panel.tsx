/** The right side of the page: what is true of the game, or the form of what is selected. */
import { lazy, Suspense } from 'react';
import { PAGE } from '../../src/words/screen.ts';
import { useView } from '../store/view.ts';
import { Overview } from './Overview.tsx';
import './panel.css';

const Inspector = lazy(() => import('../inspect/Inspector.tsx'));

export function Panel() {
  const selected = useView((view) => view.nodes.size + view.links.size > 0);
  return (
    <aside className="panel page-panel" aria-label={PAGE.panel}>
      {selected ? (
        <Suspense>
          <Inspector />
        </Suspense>
      ) : (
        <Overview />
      )}
    </aside>
  );
}
