/** What can be done with the whole thing. */
import { CommandButton } from '../../commands/CommandButton.tsx';

export function Actions() {
  return (
    <section className="form-section form-actions">
      <CommandButton name="lift" />
      <CommandButton name="duplicate" />
      <CommandButton name="leaveOut" />
      <CommandButton name="delete" />
    </section>
  );
}
