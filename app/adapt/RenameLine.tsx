/** A place or a thing that is called otherwise here: its name in the room, what changes with it, and what is left to be read. */
import { useId, useState } from 'react';
import type { Edit } from '../../src/game/edits/edit.ts';
import type { Game, NodeId } from '../../src/game/model.ts';
import { namesake } from '../../src/kit/adapt/match-places.ts';
import type { PlaceLine, Plan, ThingLine } from '../../src/kit/adapt/plan.ts';
import type { Rewording } from '../../src/kit/adapt/renaming.ts';
import { setText, spotKey } from '../../src/kit/adapt/texts.ts';
import {
  ADAPT,
  difference,
  keptSentence,
  offLimitsSentence,
  placeSentence,
  renamedSentence,
  spotSentence,
  thingSentence,
} from '../../src/words/adapt.ts';
import { useKit } from '../kit/kit-state.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { Sign } from '../shell/signs.tsx';
import { act, type Deed, keep, useAdapting, useBusy } from './adapting.ts';
import { LineFrame } from './LineFrame.tsx';

interface RenameLineProps {
  readonly line: PlaceLine | ThingLine;
  readonly plan: Plan;
  readonly game: Game;
  readonly main: boolean;
}

const idOf = (line: PlaceLine | ThingLine): NodeId => (line.sort === 'place' ? line.place : line.thing);

export function RenameLine({ line, plan, game, main }: RenameLineProps) {
  const { state, was, now } = line;
  const deed = useAdapting(({ deeds }) => deeds.get(line.key));
  return (
    <LineFrame
      line={line}
      done={state === 'kept' ? keptSentence(now) : renamedSentence(was, now)}
      otherwise={
        state === 'done'
          ? [...plan.renamer.takeBack(idOf(line)), ...noteBack(idOf(line), deed, game)]
          : undefined
      }
    >
      <Renaming line={line} plan={plan} game={game} main={main} />
    </LineFrame>
  );
}

/** What was typed beside the new name, unless it has been changed since. */
function noteBack(id: NodeId, deed: Deed | undefined, game: Game): readonly Edit[] {
  if (!deed) return [];
  const [before, after, now] = [deed.before, deed.after, game].map((one) => one.nodes.get(id)?.note);
  return after === now && before !== after ? [{ type: 'setFields', id, fields: { note: before } }] : [];
}

function Renaming({ line, plan, game, main }: RenameLineProps) {
  const field = useId();
  const id = idOf(line);
  const suggested = line.sort === 'place' ? (line.room?.name ?? '') : line.to;
  const [typed, setTyped] = useState<string>();
  const name = typed ?? suggested;
  const isName = name.trim() !== '' && name.trim() !== line.now;
  const effect = plan.renamer.rename(id, isName ? name : line.now);
  const ownNote = { of: id, field: 'note' } as const;
  const isOwn = ({ spot }: Rewording) => spotKey(spot) === spotKey(ownNote);
  const oldNote = game.nodes.get(id)?.note ?? '';
  const newNote = effect.reworded.find(isOwn)?.after ?? oldNote;
  const [note, setNote] = useState<string>();
  const others = effect.reworded.filter((one) => !isOwn(one));
  const busy = useBusy();
  const { places } = useKit(({ owned }) => owned.kit);
  const named = line.sort === 'place' && isName ? namesake(places, name) : undefined;
  const hint =
    named?.offLimits === true
      ? offLimitsSentence(named.name)
      : line.sort === 'place'
        ? placeSentence(line)
        : line.item && thingSentence(line.item);

  const rename = () => {
    if (!isName) return;
    const written = note ?? newNote;
    const edits: Edit[] = [
      { type: 'rename', id, name: name.trim() },
      ...others.map(({ spot, after }) => setText(spot, after)),
      ...(written === oldNote ? [] : [setText(ownNote, written)]),
    ];
    void act(line.key, edits);
  };
  return (
    <form
      className="adapt-rename"
      onSubmit={(event) => {
        event.preventDefault();
        rename();
      }}
    >
      <div className="adapt-names">
        <p className="adapt-was">
          <strong>{line.was}</strong>
        </p>
        <label className="aloud" htmlFor={field}>
          {`${ADAPT.newName}: ${line.was}`}
        </label>
        <input
          id={field}
          className="field"
          list={line.sort === 'place' ? `${field}-free` : undefined}
          value={name}
          onChange={(event) => setTyped(event.target.value)}
          placeholder={ADAPT.newName}
          autoComplete="off"
        />
        {line.sort === 'place' && (
          <datalist id={`${field}-free`} aria-label={ADAPT.namesHere}>
            {line.free.map((place) => (
              <option key={place.id} value={place.name}>
                {place.zone}
              </option>
            ))}
          </datalist>
        )}
        <button
          type="submit"
          className={main ? 'button button-main' : 'button'}
          aria-label={ADAPT.renameNamed(line.was)}
          disabled={!isName || busy}
        >
          {ADAPT.rename}
        </button>
        <button
          type="button"
          className="button"
          aria-label={ADAPT.keepNamed(line.was)}
          onClick={() => keep(line.key)}
        >
          {ADAPT.keep}
        </button>
      </div>
      {hint !== undefined && <p className="hint">{hint}</p>}
      {line.sort === 'place' && oldNote !== '' && (
        <label className="adapt-note">
          <span className="label">{ADAPT.exactly}</span>
          <textarea
            className="field"
            rows={2}
            value={note ?? newNote}
            onChange={(event) => setNote(event.target.value)}
          />
        </label>
      )}
      <Changes title={ADAPT.changesToo} game={game} list={others} />
      <Changes title={ADAPT.notChanged} game={game} list={isName ? effect.withheld : []} />
    </form>
  );
}

interface ChangesProps {
  readonly title: string;
  readonly game: Game;
  readonly list: readonly Rewording[];
}

function Changes({ title, game, list }: ChangesProps) {
  if (list.length === 0) return null;
  return (
    <div className="adapt-changes">
      <p className="label">{title}</p>
      <ul>
        {list.map(({ spot, before, after }) => {
          const differs = difference(before, after);
          return (
            <li key={spotKey(spot)}>
              <SentenceText sentence={spotSentence(game, spot)} />
              {': '}
              <del>{differs.before}</del> <Sign name="right" /> <ins>{differs.after}</ins>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
