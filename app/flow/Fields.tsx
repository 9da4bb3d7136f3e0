/** What stands together on the tables, in hand, or is given by the teacher shares one field and one caption: a picture of 'no holder'. */
import { ViewportPortal } from 'reactflow';
import type { Field } from '../../src/map/layout.ts';
import { fieldCaption } from '../../src/words/canvas.ts';

export function Fields({ fields }: { fields: readonly Field[] }) {
  return (
    <ViewportPortal>
      {fields.map(({ caption, ids, x, y, width, height }) => (
        <div
          key={`${caption} ${ids[0]}`}
          className="flow-field"
          style={{ transform: `translate(${x}px, ${y}px)`, width, height }}
        >
          <span className="flow-field-caption">{fieldCaption(caption)}</span>
        </div>
      ))}
    </ViewportPortal>
  );
}
