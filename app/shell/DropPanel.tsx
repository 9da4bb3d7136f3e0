/** A button and the panel that drops from it: the browser's own popover, which closes on Escape, on a press elsewhere, and when it has done its work. */
import { type ReactNode, type ToggleEvent, useId, useRef, useState } from 'react';
import './drop-panel.css';

interface DropPanelProps {
  /** On the button, and the name of the panel. */
  readonly label: string;
  readonly buttonClass: string;
  /** The side of the button that the panel is flush with. */
  readonly align: 'left' | 'right';
  readonly className: string;
  readonly children: (close: () => void) => ReactNode;
}

export function DropPanel({ label, buttonClass, align, className, children }: DropPanelProps) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  const [shown, setShown] = useState(false);

  const place = ({ newState }: ToggleEvent<HTMLDivElement>) => {
    const box = button.current?.getBoundingClientRect();
    if (newState !== 'open' || !box || !panel.current) return;
    const across = align === 'left' ? box.left : document.documentElement.clientWidth - box.right;
    panel.current.style.setProperty('--drop-down', `${box.bottom + 6}px`);
    panel.current.style.setProperty('--drop-across', `${across}px`);
    setShown(true);
  };

  return (
    <>
      <button ref={button} type="button" className={buttonClass} popoverTarget={id} aria-haspopup="dialog">
        {label}
      </button>
      <div
        ref={panel}
        id={id}
        popover="auto"
        role="dialog"
        aria-label={label}
        className={`drop-panel drop-panel-${align} ${className}`}
        onBeforeToggle={place}
        onToggle={({ newState }) => setShown(newState === 'open')}
      >
        {shown && children(() => panel.current?.hidePopover())}
      </div>
    </>
  );
}
