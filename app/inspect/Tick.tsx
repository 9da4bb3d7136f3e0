/** A box to tick, with its words. */
export interface TickProps {
  readonly label: string;
  readonly ticked: boolean;
  readonly onTick: (ticked: boolean) => void;
}

export function Tick({ label, ticked, onTick }: TickProps) {
  return (
    <label className="form-check">
      <input type="checkbox" checked={ticked} onChange={(event) => onTick(event.target.checked)} />
      {label}
    </label>
  );
}
