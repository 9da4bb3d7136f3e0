/** What went with a box that was removed, and where its contents lie now; with the way back. */
import { CommandButton } from '../commands/CommandButton.tsx';
import { useRemovalNews } from '../commands/removed.ts';
import { SentenceText } from './SentenceText.tsx';

export function RemovalNews() {
  const news = useRemovalNews();
  return (
    <div role="status" className="head-removal">
      {news.length > 0 && (
        <>
          <p>
            <SentenceText sentence={news} />
          </p>{' '}
          <CommandButton name="undo" className="button head-removal-undo" />
        </>
      )}
    </div>
  );
}
