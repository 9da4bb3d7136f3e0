/**
 * The platform's own dialog: it keeps the focus inside, closes with Escape, and gives the focus back. Its button does not close it over a value that is
 * wrong, but leads there; Escape does.
 */
import { useEffect, useId, useRef } from 'react';
import './dialog.css';

export interface DialogProps {
  readonly title: string;
  readonly close: string;
  readonly onClose: () => void;
  readonly children: React.ReactNode;
}

export function Dialog({ title, close, onClose, children }: DialogProps) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const element = dialog.current;
    if (!element?.open) element?.showModal();
    return () => element?.close();
  }, []);
  const closeUnlessWrong = () => {
    const wrong = dialog.current?.querySelector<HTMLElement>('[aria-invalid="true"]');
    if (!wrong || wrong.closest('fieldset[disabled]')) {
      onClose();
      return;
    }
    const fold = wrong.closest('details');
    if (fold) fold.open = true;
    wrong.focus();
  };
  return (
    <dialog ref={dialog} className="dialog" aria-labelledby={id} onCancel={onClose}>
      <div className="dialog-head">
        <h2 id={id}>{title}</h2>
        <button type="button" className="button" onClick={closeUnlessWrong}>
          {close}
        </button>
      </div>
      <div className="dialog-body">{children}</div>
    </dialog>
  );
}
