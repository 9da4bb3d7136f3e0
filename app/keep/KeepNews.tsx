/** Under the head: what has just happened to a game, and the files that were not opened with what is wrong in them. */
import { ADAPT_OFFER } from '../../src/words/adapt-command.ts';
import { GAMES, READ } from '../../src/words/keep.ts';
import { openAdapt } from '../adapt/open.ts';
import { bringBack } from './keeping.ts';
import { saveRaw } from './saving.ts';
import { dismissNews, type News, type ReadFailure, useKeep } from './state.ts';
import './keep.css';

export function KeepNews() {
  const { news, failures } = useKeep();
  if (!news && failures.length === 0) return null;
  return (
    <section className="keep-news" aria-live="polite" aria-label={READ.label}>
      <div className="keep-news-words">
        {failures.map((failure) => (
          <Failure key={`${failure.file} ${failure.lines[0]}`} failure={failure} />
        ))}
        {news && <NewsLine news={news} />}
      </div>
      <button type="button" className="button" onClick={dismissNews}>
        {READ.dismiss}
      </button>
    </section>
  );
}

function Failure({ failure: { file, lines } }: { failure: ReadFailure }) {
  return (
    <div className="keep-failure">
      <p>
        <strong>{READ.notOpened(file)}</strong> {lines.length === 1 && lines[0]}
      </p>
      {lines.length > 1 && (
        <ul className="keep-failure-lines">
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

function NewsLine({ news: { sentence, damaged, deleted, adapt } }: { news: News }) {
  return (
    <p>
      {sentence}
      {damaged !== undefined && (
        <button type="button" className="button" onClick={() => void saveRaw(damaged)}>
          {READ.saveRaw}
        </button>
      )}
      {adapt && (
        <button
          type="button"
          className="button"
          onClick={() => {
            dismissNews();
            openAdapt();
          }}
        >
          {ADAPT_OFFER.act}
        </button>
      )}
      {deleted !== undefined && (
        <button
          type="button"
          className="button"
          onClick={() => {
            dismissNews();
            void bringBack(deleted);
          }}
        >
          {GAMES.bringBack}
        </button>
      )}
    </p>
  );
}
