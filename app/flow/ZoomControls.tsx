/** Size of the map, and the whole of it in view; at the lower right. */
import { useStore } from 'reactflow';
import { ZOOM } from '../../src/words/canvas.ts';
import { useMounted } from './viewport.ts';

const STEP = 140;

interface Props {
  readonly onFit: () => void;
  readonly overview: boolean;
  readonly onOverview: (shown: boolean) => void;
}

export function ZoomControls({ onFit, overview, onOverview }: Props) {
  const percent = useStore((state) => Math.round(state.transform[2] * 100));
  const instance = useMounted((state) => state.instance);
  return (
    <div className="flow-zoom" role="toolbar" aria-label={ZOOM.label}>
      <button
        type="button"
        aria-pressed={overview}
        aria-label={ZOOM.overview}
        title={ZOOM.overview}
        onClick={() => onOverview(!overview)}
      >
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="M2 3h12v10H2zM8 7h6v6H8z" />
        </svg>
      </button>
      <button
        type="button"
        aria-label={ZOOM.out}
        title={ZOOM.out}
        onClick={() => void instance?.zoomOut({ duration: STEP })}
      >
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="M4.5 8h7" />
        </svg>
      </button>
      <button
        type="button"
        className="flow-percent"
        title={ZOOM.reset}
        onClick={() => void instance?.zoomTo(1, { duration: STEP })}
      >
        {ZOOM.percent(percent / 100)}
      </button>
      <button
        type="button"
        aria-label={ZOOM.in}
        title={ZOOM.in}
        onClick={() => void instance?.zoomIn({ duration: STEP })}
      >
        <svg viewBox="0 0 16 16" aria-hidden="true">
          <path d="M4.5 8h7M8 4.5v7" />
        </svg>
      </button>
      <button type="button" title={ZOOM.fitLong} onClick={onFit}>
        {ZOOM.fit}
      </button>
    </div>
  );
}
