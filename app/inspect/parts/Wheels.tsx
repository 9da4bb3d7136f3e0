/** How many wheels a lock has, and what can be set on each. */
import { useState } from 'react';
import type { NodeOf } from '../../../src/game/model.ts';
import { HARDWARE } from '../../../src/words/form-hardware.ts';
import { Segments } from '../Segments.tsx';
import { TextField } from '../TextField.tsx';
import {
  type Alphabet,
  alphabetOf,
  filledWith,
  readWheel,
  readWheelCount,
  setHardware,
  usualWheel,
  withCount,
} from './hardware.ts';
import './wheels.css';

const FILLS: readonly { readonly id: Alphabet; readonly name: string }[] = [
  { id: 'digits', name: HARDWARE.digits },
  { id: 'letters', name: HARDWARE.letters },
  { id: 'own', name: HARDWARE.own },
];

export function Wheels({ node }: { node: NodeOf<'fastener'> }) {
  const wheels = node.hardware?.wheels;
  const isPicture = node.type === 'picture';
  const usual = usualWheel(node.type, node.code);
  // Own symbols begin as what is there, so the choice alone changes nothing.
  const [own, setOwn] = useState(false);
  const alphabet = alphabetOf(wheels);
  if (usual === undefined && wheels === undefined) return <p className="hint">{HARDWARE.picturesFirst}</p>;

  return (
    <>
      <div className="form-short">
        <TextField
          field={`wheels ${node.id}`}
          label={HARDWARE.wheels}
          shown={wheels === undefined ? '' : String(wheels.length)}
          read={readWheelCount}
          write={(count) =>
            setHardware(node, { wheels: withCount(wheels, count, usual ?? '') }, `wheels ${node.id}`)
          }
          hint={HARDWARE.wheelsHint}
          numeric
        />
      </div>
      {wheels !== undefined && (
        <div>
          <p className="label">{HARDWARE.onEachWheel}</p>
          {!isPicture && (
            <Segments
              label={HARDWARE.onEachWheel}
              options={FILLS}
              chosen={own ? 'own' : alphabet}
              onChoose={(chosen) => {
                setOwn(chosen === 'own');
                if (chosen !== 'own') setHardware(node, { wheels: filledWith(wheels, chosen) });
              }}
            />
          )}
          {(own || alphabet === 'own') && <EachWheel node={node} wheels={wheels} />}
        </div>
      )}
    </>
  );
}

function EachWheel({ node, wheels }: { node: NodeOf<'fastener'>; wheels: readonly string[] }) {
  const [first = ''] = wheels;
  return (
    <>
      <p className="hint">{node.type === 'picture' ? HARDWARE.pictureHint : HARDWARE.wheelHint}</p>
      <ol className="wheels">
        {wheels.map((wheel, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a wheel is known by its place
          <li key={at}>
            <TextField
              field={`wheel ${at} ${node.id}`}
              label={HARDWARE.wheel(at + 1)}
              shown={wheel}
              read={readWheel}
              write={(symbols) =>
                setHardware(node, { wheels: wheels.with(at, symbols) }, `wheel ${at} ${node.id}`)
              }
            />
          </li>
        ))}
      </ol>
      {wheels.some((wheel) => wheel !== first) && (
        <button
          type="button"
          className="button form-add"
          onClick={() => setHardware(node, { wheels: wheels.map(() => first) })}
        >
          {HARDWARE.alike}
        </button>
      )}
    </>
  );
}
