/** What a lock opens with, as a line drawing in the colour of its text. */
import { lockSign, SIGN_PATHS } from '../../../src/sheets/signs.ts';

export function LockSign({ type }: { type: string | undefined }) {
  return (
    <svg className="flow-sign" viewBox="0 0 18 18" aria-hidden="true">
      <path d={SIGN_PATHS[lockSign(type)]} />
    </svg>
  );
}
