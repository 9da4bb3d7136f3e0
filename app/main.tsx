import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startPlacing } from './flow/tidy/unplaced.ts';
import { startJudging } from './judged/judged.ts';
import { startKeeping } from './keep/index.ts';
import { startAhead } from './parts/ahead.ts';
import { part } from './parts/part.ts';
import './shell/tokens.css';
import './shell/base.css';
import './shell/signs.css';
import './shell/kind-shape.css';
import { Breakdown } from './shell/Breakdown.tsx';
import { Page } from './shell/Page.tsx';

void startKeeping();
startJudging();
startPlacing();
// Loaded apart: the page stands before it is known how long the game takes.
const simulating = part(() => import('./engine/simulating.ts'));
simulating.whenThere(() => simulating.now()?.startSimulating());
void simulating.load();
startAhead();

const mount = document.getElementById('page');
if (mount) {
  createRoot(mount).render(
    <StrictMode>
      <Breakdown>
        <Page />
      </Breakdown>
    </StrictMode>,
  );
}
