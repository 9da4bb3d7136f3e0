/** What the games kept here need, taken over into the kit. */
import { withGames } from '../../src/kit/from-games.ts';
import { titleOf } from '../../src/words/keep.ts';
import { HAVE } from '../../src/words/screen-kit.ts';
import { contentOf } from '../keep/keeping.ts';
import type { KeptGame } from '../keep/shelf.ts';
import { useKeep } from '../keep/state.ts';
import { DropPanel } from '../shell/DropPanel.tsx';
import { freshId } from '../store/ids.ts';
import { useKit } from './kit-state.ts';
import { changeKit } from './write.ts';

async function takeFrom({ id, title }: KeptGame): Promise<void> {
  const game = await contentOf(id);
  const { owned, tell } = useKit.getState();
  if (!game) return tell({ lines: [HAVE.notRead(titleOf(title))], trouble: true });
  const kit = withGames(owned.kit, [game], { newId: freshId });
  changeKit(() => kit);
  const said = kit === owned.kit ? HAVE.takenAlready : HAVE.taken;
  tell({ lines: [said(titleOf(title))], trouble: false });
}

export function FromGames() {
  const games = useKeep((state) => state.games).filter(({ deleted }) => deleted === undefined);
  return (
    <DropPanel label={HAVE.from} buttonClass="button kit-from" align="left" className="kit-from-games">
      {(close) => (
        <>
          <p className="hint">{games.length > 0 ? HAVE.fromHint : HAVE.noGames}</p>
          <ul>
            {games.map((game) => (
              <li key={game.id}>
                <button
                  type="button"
                  className="button"
                  onClick={() => {
                    close();
                    void takeFrom(game);
                  }}
                >
                  {titleOf(game.title)}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </DropPanel>
  );
}
