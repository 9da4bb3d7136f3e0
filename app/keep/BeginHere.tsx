/** On the empty mat: one line, and three ways to begin. A drag onto the mat passes through it. */
import { EXAMPLES } from '../../src/words/examples.ts';
import { BEGIN } from '../../src/words/keep.ts';
import { useGame } from '../store/game.ts';
import { openExample } from './arriving.ts';
import { openFile } from './choosing.ts';
import { beginFromNothing, useKeep } from './state.ts';
import './begin-here.css';

export function BeginHere() {
  const empty = useGame((state) => state.game.nodes.size === 0 && !state.readOnly);
  const wanted = useKeep((state) => state.ready && !state.fromNothing);
  if (!empty || !wanted) return null;
  return (
    <section className="begin-here" aria-label={BEGIN.label}>
      <p className="begin-here-line">{BEGIN.line}</p>
      <div className="begin-here-ways">
        <div className="begin-here-way">
          <h2>{BEGIN.nothing}</h2>
          <p>{BEGIN.nothingLine}</p>
          <button type="button" className="button button-large" onClick={beginFromNothing}>
            {BEGIN.nothingAct}
          </button>
        </div>
        <div className="begin-here-way begin-here-examples">
          <h2>{BEGIN.example}</h2>
          <p>{BEGIN.exampleLine}</p>
          <ul>
            {EXAMPLES.map((example) => (
              <li key={example.slug}>
                <button type="button" className="word-link" onClick={() => void openExample(example)}>
                  {example.title}
                </button>
              </li>
            ))}
          </ul>
        </div>
        <div className="begin-here-way">
          <h2>{BEGIN.file}</h2>
          <p>{BEGIN.fileLine}</p>
          <button type="button" className="button button-large" onClick={openFile}>
            {BEGIN.fileAct}
          </button>
        </div>
      </div>
    </section>
  );
}
