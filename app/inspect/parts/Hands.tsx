import { handsOf } from '../../../src/game/defaults.ts';
import type { GameNode } from '../../../src/game/model.ts';
import { FORM, WRONG } from '../../../src/words/screen-form.ts';
import type { Reading } from '../draft.ts';
import { parseCount } from '../numbers.ts';
import { TextField } from '../TextField.tsx';
import { typeField } from '../write.ts';

/** A whole number from 1, or nothing typed: what is usual for the kind. */
export function readHands(raw: string): Reading<number | undefined> {
  if (raw.trim() === '') return { value: undefined };
  const hands = parseCount(raw, 1);
  return hands === undefined ? { wrong: WRONG.fromOne } : { value: hands };
}

/** What it would be if the node did not say. */
function usualHands(node: GameNode): number {
  const { hands: _, ...silent } = node;
  return handsOf(silent);
}

export function Hands({ node }: { node: GameNode }) {
  return (
    <section className="form-section form-short">
      <TextField
        field={`hands ${node.id}`}
        label={FORM.hands}
        shown={node.hands === undefined ? '' : String(node.hands)}
        read={readHands}
        write={(hands) => typeField(node.id, 'hands', hands)}
        placeholder={String(usualHands(node))}
        numeric
      />
    </section>
  );
}
