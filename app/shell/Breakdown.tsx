/** When the page itself fails: a plain sentence in place of a blank page, and the open game to take away. */
import { Component, type ReactNode } from 'react';
import { BREAKDOWN } from '../../src/words/screen.ts';
import { saveToFile } from '../keep/index.ts';
import './breakdown.css';

interface State {
  readonly broken: boolean;
}

export class Breakdown extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { broken: false };

  static getDerivedStateFromError(): State {
    return { broken: true };
  }

  override render() {
    if (!this.state.broken) return this.props.children;
    return (
      <main className="breakdown">
        <h1>{BREAKDOWN.what}</h1>
        <p>{BREAKDOWN.next}</p>
        <p className="breakdown-acts">
          <button type="button" className="button button-main" onClick={() => void saveToFile()}>
            {BREAKDOWN.save}
          </button>
          <button type="button" className="button" onClick={() => location.reload()}>
            {BREAKDOWN.again}
          </button>
        </p>
      </main>
    );
  }
}
