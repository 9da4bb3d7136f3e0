/** One part of a form: a heading and what belongs to it. */
import { useId } from 'react';

export function Section({ title, children }: { title: string; children: React.ReactNode }) {
  const id = useId();
  return (
    <section className="form-section" aria-labelledby={id}>
      <h3 className="form-caption" id={id}>
        {title}
      </h3>
      {children}
    </section>
  );
}
