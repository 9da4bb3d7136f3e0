/**
 * A region of the page that comes as a part of its own. One that cannot be had, or fails, says so and takes nothing else with it.
 */
import { Component, type ReactNode } from 'react';
import { PARTS } from '../../src/words/parts.ts';
import type { Part } from './part.ts';
import { tellTrouble } from './trouble.ts';
import { usePart } from './usePart.ts';

interface Props<Module> {
  readonly of: Part<Module>;
  readonly children: (module: Module) => ReactNode;
  /** What a press has opened is closed again, so that the next press tries anew, and the head says why. Without it the sentence stands in the region's place. */
  readonly onLost?: () => void;
  /** Came by itself, and is missed by nobody: nothing is said. */
  readonly silent?: boolean;
}

export function PartView<Module>({ of, children, onLost, silent = false }: Props<Module>) {
  const { module, lost, fetch } = usePart(of, onLost);
  const isTold = onLost !== undefined || silent;
  if (module === undefined) {
    return lost && !isTold ? <Lost sentence={PARTS.lost} again={() => void fetch()} /> : null;
  }
  return (
    <Region onBroken={onLost} silent={isTold}>
      {children(module)}
    </Region>
  );
}

/** In place of what is missing: why, and the way to ask again. */
export function Lost({ sentence, again }: { sentence: string; again: () => void }) {
  return (
    <div role="status" className="quiet">
      <p>{sentence}</p>
      <button type="button" className="button" onClick={again}>
        {PARTS.again}
      </button>
    </div>
  );
}

interface RegionProps {
  readonly children: ReactNode;
  readonly onBroken: (() => void) | undefined;
  readonly silent: boolean;
}

class Region extends Component<RegionProps, { readonly broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError() {
    return { broken: true };
  }

  override componentDidCatch() {
    if (!this.props.onBroken) return;
    tellTrouble(PARTS.broken);
    this.props.onBroken();
  }

  override render() {
    if (!this.state.broken) return this.props.children;
    if (this.props.silent) return null;
    return <Lost sentence={PARTS.broken} again={() => this.setState({ broken: false })} />;
  }
}
