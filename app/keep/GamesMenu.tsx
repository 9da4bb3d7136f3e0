/** The games kept in this browser, the examples, and what can be done with them. */
import { ADAPT_COMMAND } from '../../src/words/adapt-command.ts';
import { EXAMPLES } from '../../src/words/examples.ts';
import { GAMES, keptLine, titleOf } from '../../src/words/keep.ts';
import { openAdapt } from '../adapt/open.ts';
import { DropPanel } from '../shell/DropPanel.tsx';
import { useGame } from '../store/game.ts';
import { duplicateGame, openExample } from './arriving.ts';
import { openFile } from './choosing.ts';
import { beginGame, bringBack, deleteGame, openGame } from './keeping.ts';
import { saveToFile } from './saving.ts';
import type { KeptGame } from './shelf.ts';
import { useKeep } from './state.ts';
import { useMinute } from './useMinute.ts';
import './games-menu.css';

export function GamesMenu() {
  return (
    <DropPanel label={GAMES.games} buttonClass="button button-large" align="right" className="games-menu">
      {(close) => <GamesList close={close} />}
    </DropPanel>
  );
}

function GamesList({ close }: { close: () => void }) {
  const empty = useGame((state) => state.game.nodes.size === 0);
  const closing = (act: () => unknown) => () => {
    close();
    act();
  };
  return (
    <>
      <div className="games-menu-acts">
        <button type="button" className="button" onClick={closing(beginGame)}>
          {GAMES.fresh}
        </button>
        <button type="button" className="button" onClick={closing(openFile)}>
          {GAMES.open}
        </button>
        <button type="button" className="button" onClick={closing(saveToFile)}>
          {GAMES.save}
        </button>
        <button type="button" className="button" disabled={empty} onClick={closing(openAdapt)}>
          {ADAPT_COMMAND}
        </button>
      </div>
      <KeptGames onOpen={(id) => closing(() => openGame(id))()} />
      <h2 className="games-menu-heading">{GAMES.examples}</h2>
      <ul>
        {EXAMPLES.map((example) => (
          <li key={example.slug} className="games-menu-row">
            <button type="button" className="games-menu-title" onClick={closing(() => openExample(example))}>
              {example.title}
            </button>
            <p className="games-menu-line">{example.summary}</p>
          </li>
        ))}
      </ul>
    </>
  );
}

function KeptGames({ onOpen }: { onOpen: (id: string) => void }) {
  const { games, open } = useKeep();
  const now = useMinute();
  const here = games.filter((game) => game.deleted === undefined);
  const deleted = games.filter((game) => game.deleted !== undefined);
  return (
    <>
      <h2 className="games-menu-heading">{GAMES.kept}</h2>
      {here.length === 0 && <p className="games-menu-line">{GAMES.none}</p>}
      <ul>
        {here.map((game) => (
          <KeptRow key={game.id} game={game} isOpen={game.id === open?.id} now={now} onOpen={onOpen} />
        ))}
      </ul>
      {deleted.length > 0 && (
        <>
          <h2 className="games-menu-heading">{GAMES.deleted}</h2>
          <ul>
            {deleted.map((game) => (
              <DeletedRow key={game.id} game={game} />
            ))}
          </ul>
        </>
      )}
    </>
  );
}

interface RowProps {
  readonly game: KeptGame;
  readonly isOpen: boolean;
  readonly now: number;
  readonly onOpen: (id: string) => void;
}

function KeptRow({ game, isOpen, now, onOpen }: RowProps) {
  const title = titleOf(game.title);
  return (
    <li className="games-menu-row">
      <button
        type="button"
        className="games-menu-title"
        aria-label={GAMES.openNamed(title)}
        aria-current={isOpen || undefined}
        onClick={() => onOpen(game.id)}
      >
        {title}
      </button>
      <p className="games-menu-line">
        {isOpen && <strong className="games-menu-open">{GAMES.isOpen}</strong>}
        {keptLine(game.edited, game.filed, game.changes, now)}
      </p>
      <div className="games-menu-row-acts">
        <button
          type="button"
          className="button"
          aria-label={GAMES.duplicateNamed(title)}
          onClick={() => void duplicateGame(game.id)}
        >
          {GAMES.duplicate}
        </button>
        <button
          type="button"
          className="button"
          aria-label={GAMES.removeNamed(title)}
          onClick={() => void deleteGame(game.id)}
        >
          {GAMES.remove}
        </button>
      </div>
    </li>
  );
}

function DeletedRow({ game }: { game: KeptGame }) {
  const title = titleOf(game.title);
  return (
    <li className="games-menu-row">
      <span className="games-menu-gone">{title}</span>
      <div className="games-menu-row-acts">
        <button
          type="button"
          className="button"
          aria-label={GAMES.bringBackNamed(title)}
          onClick={() => void bringBack(game.id)}
        >
          {GAMES.bringBack}
        </button>
      </div>
    </li>
  );
}
