/** The whole page: head, things to drag, the map, the panel. */
import { PAGE } from '../../src/words/screen.ts';
import { BeginHere, FileDrop, KeepNews } from '../keep/index.ts';
import { Panel } from '../panel/Panel.tsx';
import { Head } from './Head.tsx';
import { Palette } from './Palette.tsx';
import './page.css';

export function Page() {
  return (
    <div className="page">
      <Head />
      <KeepNews />
      <Palette />
      <main className="page-mat" aria-label={PAGE.map}>
        <BeginHere />
      </main>
      <Panel />
      <FileDrop />
    </div>
  );
}
