/** What a thing asks of a pupil, and what one does who cannot. A lock asks by its type, with its usual other way; more can be said of it. */

import { fastenerType } from '../../../src/fasteners/index.ts';
import { ABILITIES, type Ability } from '../../../src/game/abilities.ts';
import type { GameNode } from '../../../src/game/model.ts';
import { ASKS, abilitiesSaid, abilityName } from '../../../src/words/form-abilities.ts';
import { usualOtherWay } from '../../../src/words/lock-types.ts';
import { Chips } from '../Chips.tsx';
import { Fold } from '../Fold.tsx';
import { readText, TextField } from '../TextField.tsx';
import { withWord } from '../word-list.ts';
import { chooseField, typeField } from '../write.ts';
import './care.css';

export function Asks({ node }: { node: GameNode }) {
  const asks = node.asks ?? [];
  const usual: readonly Ability[] = node.kind === 'fastener' ? fastenerType(node.type).asks : [];
  const all = [...new Set([...usual, ...asks])];
  const chips = ABILITIES.filter((ability) => !usual.includes(ability));
  return (
    <Fold
      title={ASKS.heading}
      said={all.length === 0 ? undefined : abilitiesSaid(all)}
      opened={asks.length > 0 && node.otherWay === undefined}
    >
      {usual.length > 0 && (
        <ul className="care">
          {usual.map((ability) => (
            <li key={ability}>
              <strong>{ASKS.of(ability)}</strong>
              {node.kind === 'fastener' && usualOtherWay(node.type, ability)}
            </li>
          ))}
        </ul>
      )}
      <div>
        {usual.length > 0 && <p className="label">{ASKS.more}</p>}
        <Chips
          label={usual.length > 0 ? ASKS.more : ASKS.heading}
          chips={chips.map((id) => ({ id, name: abilityName(id) }))}
          pressed={new Set(asks)}
          onPress={(ability, pressed) =>
            chooseField(node.id, 'asks', withWord(asks, ability, pressed, ABILITIES))
          }
        />
      </div>
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
