/** What about a thing can hurt someone: what the teacher states of it, and what is to be heeded. */
import { type CautionOfThing, cautionsOf, HAZARDS } from '../../../src/cautions/index.ts';
import type { GameNode } from '../../../src/game/model.ts';
import {
  cautionSources,
  cautionText,
  cautionTitle,
  hazardName,
  OWN_RULES,
} from '../../../src/words/cautions.ts';
import { CARE } from '../../../src/words/form-care.ts';
import { list } from '../../../src/words/numbers.ts';
import { Chips } from '../Chips.tsx';
import { Fold } from '../Fold.tsx';
import { withWord } from '../word-list.ts';
import { chooseField } from '../write.ts';
import './care.css';

const CHIPS = HAZARDS.map((id) => ({ id, name: hazardName(id) }));

export function Care({ node }: { node: GameNode }) {
  const cautions = cautionsOf(node);
  const own = cautions.filter(({ cause }) => cause !== 'kind');
  const hazards = node.hazards ?? [];
  return (
    <Fold
      title={CARE.heading}
      said={own.length === 0 ? undefined : list(own.map(({ id }) => cautionTitle(id)))}
    >
      {node.kind !== 'fastener' && (
        <Chips
          label={CARE.stated}
          chips={CHIPS}
          pressed={new Set(hazards)}
          onPress={(hazard, pressed) =>
            chooseField(node.id, 'hazards', withWord(hazards, hazard, pressed, HAZARDS))
          }
        />
      )}
      {cautions.length > 0 && (
        <ul className="care">
          {cautions.map((caution) => (
            <Caution key={caution.id} caution={caution} />
          ))}
        </ul>
      )}
      {cautions.length > 0 && <p className="hint">{OWN_RULES}</p>}
    </Fold>
  );
}

function Caution({ caution: { id, cause } }: { caution: CautionOfThing }) {
  return (
    <li>
      <p>
        <strong>{cautionTitle(id)}</strong> {cautionText(id)}
      </p>
      <p className="hint">
        {cause === 'suggested' && `${CARE.suggested} `}
        {cautionSources(id)}
      </p>
    </li>
  );
}
