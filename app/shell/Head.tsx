/** The head of the page: what game this is, whether it can be won, and what can be done with the whole of it. */
import { PRODUCT } from '../../src/words/screen.ts';
import { GamesMenu, SavedState } from '../keep/index.ts';
import './head.css';

export function Head() {
  return (
    <header className="head page-head">
      <h1 className="head-title">{PRODUCT}</h1>
      <GamesMenu />
      <SavedState />
    </header>
  );
}
