/** What can be done with all that is selected; stays in sight below a long form. */
import { CommandButton } from '../../commands/CommandButton.tsx';

export function Actions() {
  return (
    <section className="form-actions form-foot">
      <CommandButton name="duplicate" />
      <CommandButton name="leaveOut" />
      <CommandButton name="delete" />
    </section>
  );
}
