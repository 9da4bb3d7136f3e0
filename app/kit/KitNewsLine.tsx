/** What has just happened to the kit, or why a file was not taken. */
import { KIT } from '../../src/words/screen-kit.ts';
import { Sign } from '../shell/signs.tsx';
import { useKit } from './kit-state.ts';

export function KitNewsLine() {
  const { news, tell } = useKit();
  return (
    <div role="status" className="kit-news-place">
      {news && (
        <div className={news.trouble ? 'kit-news kit-news-trouble' : 'kit-news'}>
          <div>
            {news.lines.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
          {news.act && (
            <button type="button" className="button" onClick={news.act.run}>
              {news.act.label}
            </button>
          )}
          <button
            type="button"
            className="kit-icon"
            aria-label={KIT.dismiss}
            title={KIT.dismiss}
            onClick={() => tell(undefined)}
          >
            <Sign name="cross" />
          </button>
        </div>
      )}
    </div>
  );
}
