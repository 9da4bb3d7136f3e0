/** What a thing asks of a pupil, and what one does who cannot. */
import { ABILITIES } from '../../../src/game/abilities.ts';
import type { GameNode } from '../../../src/game/model.ts';
import { ASKS, abilitiesSaid, abilityName } from '../../../src/words/form-abilities.ts';
import { Chips } from '../Chips.tsx';
import { Fold } from '../Fold.tsx';
import { readText, TextField } from '../TextField.tsx';
import { withWord } from '../word-list.ts';
import { chooseField, typeField } from '../write.ts';

const CHIPS = ABILITIES.map((id) => ({ id, name: abilityName(id) }));

export function Asks({ node }: { node: GameNode }) {
  const asks = node.asks ?? [];
  return (
    <Fold title={ASKS.heading} said={asks.length === 0 ? undefined : abilitiesSaid(asks)}>
      <Chips
        label={ASKS.heading}
        chips={CHIPS}
        pressed={new Set(asks)}
        onPress={(ability, pressed) =>
          chooseField(node.id, 'asks', withWord(asks, ability, pressed, ABILITIES))
        }
      />
      {(asks.length > 0 || node.otherWay !== undefined) && (
        <TextField
          field={`otherWay ${node.id}`}
          label={ASKS.otherWay}
          shown={node.otherWay ?? ''}
          read={readText}
          write={(text) => typeField(node.id, 'otherWay', text)}
          placeholder={ASKS.otherWayHint}
          lines={2}
        />
      )}
    </Fold>
  );
}
