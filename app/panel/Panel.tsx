/** The right side of the page: what is true of the game, or the form of what is selected. */
import { PAGE } from '../../src/words/screen.ts';
import './panel.css';

export function Panel() {
  return <aside className="panel page-panel" aria-label={PAGE.panel} />;
}
