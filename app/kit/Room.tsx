/** My room: hiding places in the order of the walk that sets them up. */
import { useId, useRef, useState } from 'react';
import { changePlace, removePlace } from '../../src/kit/edits.ts';
import { sameWords } from '../../src/kit/fit/suits.ts';
import type { RoomPlace } from '../../src/kit/model.ts';
import { ROOM } from '../../src/words/screen-kit.ts';
import { readText, TextField } from '../inspect/TextField.tsx';
import { Sign } from '../shell/signs.tsx';
import { freshId } from '../store/ids.ts';
import { useKit } from './kit-state.ts';
import { addToWalk, inOrder, moveOnWalk } from './walk.ts';
import { changeKit } from './write.ts';

function AddPlace() {
  const id = useId();
  const [name, setName] = useState('');
  const places = useKit(({ owned }) => owned.kit.places);
  const isThere = name.trim() !== '' && places.some((place) => sameWords(place.name, name));
  return (
    <form
      className="kit-add-place"
      onSubmit={(event) => {
        event.preventDefault();
        if (name.trim() === '' || isThere) return;
        changeKit((kit) => addToWalk(kit, { id: freshId(), name: name.trim() }));
        setName('');
      }}
    >
      <label className="label" htmlFor={id}>
        {ROOM.add}
      </label>
      <div className="kit-add-line">
        <input
          id={id}
          className="field"
          autoComplete="off"
          placeholder={ROOM.placeholder}
          value={name}
          aria-invalid={isThere}
          aria-describedby={isThere ? `${id}-there` : undefined}
          onChange={({ target }) => setName(target.value)}
        />
        <button type="submit" className="button">
          {ROOM.addAct}
        </button>
      </div>
      {isThere && (
        <p className="hint" id={`${id}-there`}>
          {ROOM.there(name.trim())}
        </p>
      )}
    </form>
  );
}

/** The schema knows no field with nothing in it. */
function withZone({ zone: _, ...rest }: RoomPlace, zone: string | undefined): RoomPlace {
  return zone === undefined ? rest : { ...rest, zone };
}

function withOffLimits({ offLimits: _, ...rest }: RoomPlace, offLimits: boolean): RoomPlace {
  return offLimits ? { ...rest, offLimits } : rest;
}

interface LineProps {
  readonly place: RoomPlace;
  readonly number: number;
  readonly isLast: boolean;
  readonly say: (sentence: string) => void;
}

function PlaceLine({ place, number, isLast, say }: LineProps) {
  const earlier = useRef<HTMLButtonElement>(null);
  const later = useRef<HTMLButtonElement>(null);
  const name = place.name.trim() || ROOM.nameless;
  const move = (by: -1 | 1) => {
    changeKit((kit) => moveOnWalk(kit, place.id, by));
    const to = number + by;
    say(ROOM.moved(name, to));
    // The way on, where the end is reached: a button that does nothing any more would lose the focus.
    const button = to === 1 ? later : by === 1 && isLast ? earlier : by === 1 ? later : earlier;
    requestAnimationFrame(() => button.current?.focus());
  };
  return (
    <li className={place.offLimits ? 'kit-place kit-place-off' : 'kit-place'}>
      <span className="kit-place-number">{number}</span>
      <TextField
        field={`place ${place.id}`}
        label={ROOM.nameOf(number)}
        labelAloud
        shown={place.name}
        read={(raw) => ({ value: raw })}
        write={(next) => changeKit((kit) => changePlace(kit, { ...place, name: next }), `place ${place.id}`)}
      />
      <TextField
        field={`zone ${place.id}`}
        label={ROOM.zoneOf(name)}
        labelAloud
        shown={place.zone ?? ''}
        placeholder={ROOM.zoneHint}
        read={readText}
        write={(zone) => changeKit((kit) => changePlace(kit, withZone(place, zone)), `zone ${place.id}`)}
      />
      <label className="kit-choice">
        <input
          type="checkbox"
          aria-label={ROOM.offLimitsOf(name)}
          checked={place.offLimits === true}
          onChange={({ target }) =>
            changeKit((kit) => changePlace(kit, withOffLimits(place, target.checked)))
          }
        />
        {ROOM.offLimits}
      </label>
      <button
        ref={earlier}
        type="button"
        className="kit-icon"
        aria-label={ROOM.earlier(name)}
        title={ROOM.earlier(name)}
        disabled={number === 1}
        onClick={() => move(-1)}
      >
        <Sign name="up" />
      </button>
      <button
        ref={later}
        type="button"
        className="kit-icon"
        aria-label={ROOM.later(name)}
        title={ROOM.later(name)}
        disabled={isLast}
        onClick={() => move(1)}
      >
        <Sign name="down" />
      </button>
      <button
        type="button"
        className="kit-icon"
        aria-label={ROOM.remove(name)}
        title={ROOM.remove(name)}
        onClick={() => changeKit((kit) => removePlace(kit, place.id))}
      >
        <Sign name="cross" />
      </button>
    </li>
  );
}

export function Room() {
  const places = inOrder(useKit(({ owned }) => owned.kit.places));
  const [said, say] = useState('');
  return (
    <div className="kit-room">
      <AddPlace />
      {places.length === 0 ? (
        <p className="quiet">{ROOM.none}</p>
      ) : (
        <>
          <p className="hint">{ROOM.hint}</p>
          <div className="kit-places-head" aria-hidden="true">
            <span />
            <span>{ROOM.name}</span>
            <span>{ROOM.zone}</span>
          </div>
          <ol>
            {places.map((place, i) => (
              <PlaceLine
                key={place.id}
                place={place}
                number={i + 1}
                isLast={i === places.length - 1}
                say={say}
              />
            ))}
          </ol>
        </>
      )}
      <p className="aloud" role="status">
        {said}
      </p>
    </div>
  );
}
