/** What I have: plates to tap on the left, what is in the kit on the right. */
import { useId } from 'react';
import { itemsOf, WHATS } from '../../src/kit/model.ts';
import { HAVE, kitSum, TEMPLATE_NAMES } from '../../src/words/screen-kit.ts';
import { FromGames } from './FromGames.tsx';
import { ItemRow } from './ItemRow.tsx';
import { ItemSign, typeOf } from './ItemSign.tsx';
import { useKit } from './kit-state.ts';
import { countOf, groupOf, PLATE_GROUPS, TEMPLATES } from './templates.ts';
import { tap } from './write.ts';

function Plates() {
  const id = useId();
  const items = useKit(({ owned }) => owned.kit.items);
  return (
    <section className="kit-plates" aria-labelledby={id}>
      <h3 id={id}>{HAVE.add}</h3>
      <p className="hint">{HAVE.addHint}</p>
      <FromGames />
      {PLATE_GROUPS.map((group) => (
        <section key={group} aria-label={HAVE.plates[group]}>
          <h4 className="label">{HAVE.plates[group]}</h4>
          <ul className="kit-plates-group">
            {TEMPLATES.filter(({ item }) => groupOf(item) === group).map((template) => {
              const { what } = template.item;
              const count = countOf(items, template);
              return (
                <li key={template.name}>
                  <button
                    type="button"
                    className={`kit-plate kit-plate-${what}`}
                    onClick={() => tap(template)}
                  >
                    <ItemSign what={what} type={typeOf(template.item)} />
                    <span>{TEMPLATE_NAMES[template.name]}</span>
                    {count > 0 && <span className="kit-plate-count">{count}</span>}
                  </button>
                </li>
              );
            })}
          </ul>
        </section>
      ))}
    </section>
  );
}

export function Have() {
  const id = useId();
  const kit = useKit(({ owned }) => owned.kit);
  return (
    <div className="kit-have">
      <Plates />
      <section className="kit-items" aria-labelledby={id}>
        <header className="kit-items-head">
          <h3 id={id}>{HAVE.here}</h3>
          {kit.items.length > 0 && (
            <p className="quiet" role="status">
              {kitSum(kit.items)}
            </p>
          )}
        </header>
        {kit.items.length === 0 && <p className="quiet">{HAVE.none}</p>}
        {WHATS.map((what) => {
          const items = itemsOf(kit, what);
          return (
            items.length > 0 && (
              <section key={what} aria-label={HAVE.groups[what]}>
                <h4 className="label">{HAVE.groups[what]}</h4>
                <ul>
                  {items.map((item) => (
                    <ItemRow key={item.id} item={item} />
                  ))}
                </ul>
              </section>
            )
          );
        })}
      </section>
    </div>
  );
}
