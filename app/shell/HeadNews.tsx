/**
 * News of what has just been done, until something else is: what went with a box that was removed, with the way back; how
 * tidying goes; what could not be had. It stands after the verdict, which keeps its answer and what is worth a look.
 */
import { TIDYING } from '../../src/words/screen-commands.ts';
import type { Sentence } from '../../src/words/sentence.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { useRemovalNews } from '../commands/removed.ts';
import { useTroubleNews } from '../parts/trouble.ts';
import { useGame } from '../store/game.ts';
import { useTidying } from '../store/tidying.ts';
import { SentenceText } from './SentenceText.tsx';

function useTidyNews(): Sentence {
  const game = useGame((state) => state.game);
  const { work, slow, tidyAlready } = useTidying();
  if (work && slow) return [TIDYING[work](game.nodes.size)];
  return tidyAlready === game ? [TIDYING.already] : [];
}

/** Empty when there is nothing to be told. */
export function useHeadNews(): Sentence {
  const removal = useRemovalNews();
  const tidying = useTidyNews();
  const trouble = useTroubleNews();
  if (trouble !== undefined) return [trouble];
  return tidying.length > 0 ? tidying : removal;
}

export function HeadNews() {
  const news = useHeadNews();
  const removal = useRemovalNews();
  return (
    <div role="status" className="head-news">
      {news.length > 0 && (
        <>
          <p>
            <SentenceText sentence={news} />
          </p>{' '}
          {news === removal && <CommandButton name="undo" className="button head-news-undo" />}
        </>
      )}
    </div>
  );
}
