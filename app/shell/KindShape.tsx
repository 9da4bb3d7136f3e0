/** The shapes of the map in miniature: shape and sign tell the kind, colour never does it alone. */
import type { Kind } from '../../src/game/model.ts';

const SHAPES: Readonly<Record<Kind, React.ReactNode>> = {
  place: (
    <path
      className="kind-shape-thick"
      d="M5 8V3.5h5.5M29.5 3.5H35V8M35 18v4.5h-5.5M10.5 22.5H5V18"
      fill="none"
    />
  ),
  container: (
    <>
      <rect className="kind-shape-thick" x="5" y="3" width="30" height="20" rx="2.5" />
      <rect className="kind-shape-hair" x="8.5" y="6.5" width="23" height="13" rx="1" fill="none" />
    </>
  ),
  fastener: (
    <>
      <rect className="kind-shape-plate" x="2" y="5" width="36" height="16" rx="2.5" />
      <path className="kind-shape-wall" d="M20 2v22" />
      <circle className="kind-shape-rivet" cx="10" cy="13" r="1.8" />
      <circle className="kind-shape-rivet" cx="30" cy="13" r="1.8" />
    </>
  ),
  key: (
    <>
      <path d="M9 5h26v16H9l-5-5v-6z" />
      <circle cx="11" cy="13" r="2" fill="none" />
    </>
  ),
  clue: <path d="M4.5 5h24l7 7v9h-31zM28.5 5v7h7" />,
  tool: <rect x="5" y="5" width="30" height="16" rx="8" />,
  puzzle: <path className="kind-shape-thick" d="M10 3.5h20l5 5v9l-5 5H10l-5-5v-9z" />,
  prize: (
    <>
      <path d="M4.5 5h31l-5 8 5 8h-31z" />
      <path
        className="kind-shape-hair"
        d="M13 9.2l1.2 2.6 2.8.3-2.1 1.9.6 2.8-2.5-1.4-2.5 1.4.6-2.8L9 12.1l2.8-.3z"
        fill="none"
      />
    </>
  ),
};

export function KindShape({ kind }: { kind: Kind }) {
  return (
    <svg className="kind-shape" viewBox="0 0 40 26" aria-hidden="true">
      {SHAPES[kind]}
    </svg>
  );
}
