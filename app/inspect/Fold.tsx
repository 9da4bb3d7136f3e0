/** One part of a form that is rarely wanted, folded under its heading; what is said in it stands beside the heading while it is shut. */
import { useState } from 'react';
import './fold.css';

export interface FoldProps {
  readonly title: string;
  /** In a few words. */
  readonly said?: string | undefined;
  /** Whether it stands open when the form is opened. */
  readonly opened?: boolean;
  readonly children: React.ReactNode;
}

export function Fold({ title, said, opened = false, children }: FoldProps) {
  const [open, setOpen] = useState(opened);
  return (
    <details
      className="form-section form-fold"
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        {title} {!open && said !== undefined && <span className="form-fold-said">{said}</span>}
      </summary>
      <div className="form-stack form-fold-body">{children}</div>
    </details>
  );
}
