/** A button that runs a command and says its keys. */
import { Sign, type SignName } from '../shell/signs.tsx';
import type { CommandName } from './registry.ts';
import { useCommand } from './use-command.ts';

export function CommandButton({
  name,
  sign,
  className = 'button',
  onApproach,
}: {
  name: CommandName;
  sign?: SignName;
  className?: string;
  /** The pointer or the focus has come to it: what it needs can be got ready. */
  onApproach?: () => void;
}) {
  const { label, enabled, keys, run } = useCommand(name);
  return (
    <button
      type="button"
      className={className}
      disabled={!enabled}
      title={keys === undefined ? label : `${label} (${keys})`}
      onClick={run}
      onPointerEnter={onApproach}
      onFocus={onApproach}
    >
      {sign && <Sign name={sign} />}
      {label}
    </button>
  );
}
