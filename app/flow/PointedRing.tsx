/** Rings round what is pointed at from elsewhere on the page, such as a line of the order of play. */
import { ViewportPortal } from 'reactflow';
import type { MapLayout } from '../../src/map/layout.ts';
import { useView } from '../store/view.ts';
import { matRects } from './geometry.ts';

const OFF = 4;

export function PointedRing({ layout }: { layout: MapLayout }) {
  const pointed = useView((state) => state.pointed);
  if (pointed.size === 0) return null;
  const rects = matRects(layout);
  return (
    <ViewportPortal>
      {[...pointed].map((id) => {
        const rect = rects.get(id);
        if (!rect) return null;
        const { x, y, width, height } = rect;
        return (
          <div
            key={id}
            className="flow-pointed"
            style={{
              translate: `${x - OFF}px ${y - OFF}px`,
              width: width + 2 * OFF,
              height: height + 2 * OFF,
            }}
          />
        );
      })}
    </ViewportPortal>
  );
}
