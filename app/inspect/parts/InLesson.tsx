/** What is rarely said of a thing, folded under one heading; open where something of it is said. */
import { hintAfterOf, isStep, sharedOf } from '../../../src/game/defaults.ts';
import { type Game, type GameNode, parentOf } from '../../../src/game/model.ts';
import { FORM, WRONG } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import type { Reading } from '../draft.ts';
import { Fold } from '../Fold.tsx';
import { readMinutes, typedMinutes } from '../minutes.ts';
import { TextField } from '../TextField.tsx';
import { Tick } from '../Tick.tsx';
import { chooseField, typeField } from '../write.ts';
import { withoutHolder } from './holders.ts';
import { Shared } from './Shared.tsx';

function readMinuteOfPlay(raw: string): Reading<number | undefined> {
  return readMinutes(raw, WRONG.minuteOfPlay);
}

function readHintAfter(raw: string): Reading<number | undefined> {
  return readMinutes(raw, WRONG.minutes);
}

/** What it would be if the node did not say. */
function usualHint(node: GameNode): string {
  const { hintAfter: _, ...silent } = node;
  return typedMinutes(hintAfterOf(silent));
}

function saysAny(node: GameNode): boolean {
  const { checked, hintAfter, atMinute, decoy } = node;
  return (
    checked === true ||
    decoy === true ||
    hintAfter !== undefined ||
    atMinute !== undefined ||
    sharedOf(node) !== undefined
  );
}

/** When a thing is there that no minute of play is said of. */
function whenElse(game: Game, node: GameNode): string {
  if (parentOf(node) !== undefined) return FORM.atMinuteHint.inside;
  return withoutHolder(game, node) === 'given' ? FORM.atMinuteHint.given : FORM.atMinuteHint.start;
}

export function InLesson({ node }: { node: GameNode }) {
  const game = useGame((state) => state.game);
  const given = node.kind !== 'place' && node.kind !== 'puzzle' && node.kind !== 'fastener';
  const shared = node.kind === 'tool' || node.kind === 'container' || node.kind === 'place';
  const step = isStep(node);
  return (
    <Fold title={FORM.inLesson} opened={saysAny(node)}>
      {shared && <Shared node={node} />}
      {(step || node.checked === true) && (
        <Tick
          label={FORM.checked}
          ticked={node.checked === true}
          onTick={(ticked) => chooseField(node.id, 'checked', ticked || undefined)}
        />
      )}
      {(step || node.hintAfter !== undefined) && (
        <div className="form-short">
          <TextField
            field={`hintAfter ${node.id}`}
            label={FORM.hintAfter}
            shown={node.hintAfter === undefined ? '' : typedMinutes(node.hintAfter)}
            read={readHintAfter}
            write={(minutes) => typeField(node.id, 'hintAfter', minutes)}
            placeholder={usualHint(node)}
          />
        </div>
      )}
      {given && (
        <div className="form-short">
          <TextField
            field={`atMinute ${node.id}`}
            label={FORM.atMinute}
            shown={node.atMinute === undefined ? '' : typedMinutes(node.atMinute).replace(/ min$/, '')}
            read={readMinuteOfPlay}
            write={(minute) => typeField(node.id, 'atMinute', minute)}
            hint={whenElse(game, node)}
          />
        </div>
      )}
      {node.kind !== 'prize' && (
        <Tick
          label={FORM.decoy}
          ticked={node.decoy === true}
          onTick={(ticked) => chooseField(node.id, 'decoy', ticked || undefined)}
        />
      )}
    </Fold>
  );
}
