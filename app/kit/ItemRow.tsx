/** One line of the kit: what it is, how many, and its details when they are opened. */
import { useState } from 'react';
import { bought, removeItem } from '../../src/kit/edits.ts';
import type { KitItem } from '../../src/kit/model.ts';
import { MAX_COUNT } from '../../src/kit/schema.ts';
import { HAVE, itemFacts, itemKind, itemTitle } from '../../src/words/screen-kit.ts';
import { Sign } from '../shell/signs.tsx';
import { Count } from './Count.tsx';
import { ItemDetails } from './ItemDetails.tsx';
import { LineSign, typeOf } from './ItemSign.tsx';
import { changeKit, writeCount } from './write.ts';

export function ItemRow({ item }: { item: KitItem }) {
  const [open, setOpen] = useState(false);
  const title = itemTitle(item);
  const told = [title === itemKind(item) ? '' : itemKind(item), itemFacts(item)].filter(
    (part) => part !== '',
  );
  return (
    <li className="kit-item">
      <div className="kit-item-line">
        <LineSign what={item.what} type={typeOf(item)} />
        <div className="kit-item-words">
          <p className="kit-item-title">{title}</p>
          {told.length > 0 && <p className="kit-item-facts">{told.join(' · ')}</p>}
        </div>
        {item.toBuy !== undefined && (
          <>
            <span className="kit-to-buy">{HAVE.toBuy(item.toBuy)}</span>
            <button
              type="button"
              className="button"
              aria-label={HAVE.boughtNamed(title)}
              onClick={() => changeKit((kit) => bought(kit, item.id))}
            >
              {HAVE.bought}
            </button>
          </>
        )}
        <Count
          value={item.count}
          least={0}
          most={MAX_COUNT}
          names={{ fewer: HAVE.fewer(title), more: HAVE.more(title), count: HAVE.count(title) }}
          write={(count, tag) => writeCount(item.id, count, tag && `${tag} ${item.id}`)}
        />
        <button
          type="button"
          className="button"
          aria-expanded={open}
          aria-label={HAVE.detailsOf(title)}
          onClick={() => setOpen(!open)}
        >
          {HAVE.details}
        </button>
        <button
          type="button"
          className="kit-icon"
          aria-label={HAVE.remove(title)}
          title={HAVE.remove(title)}
          onClick={() => changeKit((kit) => removeItem(kit, item.id))}
        >
          <Sign name="cross" />
        </button>
      </div>
      {open && <ItemDetails item={item} />}
    </li>
  );
}
