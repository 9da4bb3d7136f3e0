/**
 * The right side of the page: what is true of the game, the form of what is selected, or what falls without what is lifted.
 * On a small screen it lies over the map and is called by a tab.
 */
import { useEffect, useRef } from 'react';
import { PAGE, PANEL } from '../../src/words/screen.ts';
import { JUDGING } from '../judged/judged.ts';
import { PartView } from '../parts/PartView.tsx';
import { part } from '../parts/part.ts';
import { Sign } from '../shell/signs.tsx';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { usePanel } from './topics.ts';
import './panel.css';

const LIFT_PANEL = part(() => import('./LiftPanel.tsx'));
const INSPECTOR = part(() => import('../inspect/Inspector.tsx'));

export function Panel() {
  const lifted = useView((view) => view.lifted);
  const selected = useSelected();
  const open = usePanel((state) => state.open);
  const panel = useRef<HTMLElement>(null);
  const mode = lifted !== undefined ? 'lift' : selected ? 'form' : 'overview';
  useTopic(panel);
  useTop(panel, mode);

  return (
    <>
      <button
        type="button"
        className="panel-tab"
        aria-expanded={open}
        aria-controls="panel"
        onClick={() => usePanel.getState().setOpen(!open)}
      >
        <Sign name={open ? 'close' : 'left'} />
        {open ? PANEL.close : PANEL.tab[mode]}
      </button>
      <aside
        ref={panel}
        id="panel"
        className={open ? 'panel page-panel panel-open' : 'panel page-panel'}
        aria-label={PAGE.panel}
      >
        {lifted !== undefined ? (
          <PartView of={LIFT_PANEL}>
            {({ default: LiftPanel }) => <LiftPanel key={lifted} lifted={lifted} />}
          </PartView>
        ) : selected ? (
          <PartView of={INSPECTOR}>{({ default: Inspector }) => <Inspector />}</PartView>
        ) : (
          <PartView of={JUDGING}>{({ Overview }) => <Overview />}</PartView>
        )}
      </aside>
    </>
  );
}

/** Something that is there is selected: what an undo took away has no form. */
function useSelected(): boolean {
  const nodes = useView((view) => view.nodes);
  const links = useView((view) => view.links);
  return useGame(
    ({ game }) => [...nodes].some((id) => game.nodes.has(id)) || [...links].some((id) => game.links.has(id)),
  );
}

/** What is new in the panel begins at its top. */
function useTop(panel: React.RefObject<HTMLElement | null>, mode: string): void {
  const first = useView((view) => (mode === 'form' ? [...view.nodes, ...view.links].join(' ') : ''));
  useEffect(() => {
    if (`${mode} ${first}` !== '') panel.current?.scrollTo({ top: 0 });
  }, [mode, first, panel]);
}

/** Brings the section that was asked for into view and gives its heading the focus. */
function useTopic(panel: React.RefObject<HTMLElement | null>): void {
  const asked = usePanel((state) => state.asked);
  useEffect(() => {
    if (asked === 0) return;
    const { topic } = usePanel.getState();
    const name = topic === 'needed' || topic === 'chain' ? 'steps' : topic;
    const section = panel.current?.querySelector(`[data-topic="${name}"]`);
    section?.scrollIntoView({ block: 'start' });
    section?.querySelector<HTMLElement>('h2')?.focus({ preventScroll: true });
  }, [asked, panel]);
}
