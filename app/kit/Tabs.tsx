/** Pages beside each other: one is shown, the arrow keys lead from one to the next. */
import { useRef } from 'react';

interface TabsProps<Name extends string> {
  readonly pages: readonly Name[];
  readonly shown: Name;
  readonly label: string;
  readonly names: Readonly<Record<Name, string>>;
  readonly choose: (page: Name) => void;
}

export function Tabs<Name extends string>({ pages, shown, label, names, choose }: TabsProps<Name>) {
  const list = useRef<HTMLDivElement>(null);
  const step = (by: number) => {
    const place = (pages.indexOf(shown) + by + pages.length) % pages.length;
    const next = pages[place];
    if (next === undefined) return;
    choose(next);
    const button = list.current?.children[place];
    if (button instanceof HTMLElement) button.focus();
  };
  return (
    <div
      ref={list}
      className="kit-tabs"
      role="tablist"
      aria-label={label}
      onKeyDown={(event) => {
        if (event.key === 'ArrowRight') step(1);
        else if (event.key === 'ArrowLeft') step(-1);
        else return;
        event.preventDefault();
      }}
    >
      {pages.map((page) => (
        <button
          key={page}
          type="button"
          role="tab"
          className="kit-tab"
          aria-selected={page === shown}
          tabIndex={page === shown ? 0 : -1}
          onClick={() => choose(page)}
        >
          {names[page]}
        </button>
      ))}
    </div>
  );
}
