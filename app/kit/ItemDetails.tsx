/** What else can be said of an item, where it matters. */
import { useId } from 'react';
import { fastenerType } from '../../src/fasteners/index.ts';
import type { ItemOf, KitItem } from '../../src/kit/model.ts';
import { MAX_COUNT } from '../../src/kit/schema.ts';
import { HAVE, WRONG_KIT } from '../../src/words/screen-kit.ts';
import type { Reading } from '../inspect/draft.ts';
import { parseCount } from '../inspect/numbers.ts';
import { readText, TextField } from '../inspect/TextField.tsx';
import { usualWheel } from './templates.ts';
import { writeField } from './write.ts';

/** More than any lock has. */
const MAX_WHEELS = 20;

function readCountUpTo(most: number, wrong: string) {
  return (raw: string): Reading<number | undefined> => {
    if (raw.trim() === '') return { value: undefined };
    const value = parseCount(raw, 1);
    return value === undefined || value > most ? { wrong } : { value };
  };
}

/** '6', '6.5', '6,5 mm'. */
function readMillimetres(raw: string): Reading<number | undefined> {
  const typed = raw
    .trim()
    .replace(/\s*mm$/i, '')
    .replace(',', '.');
  if (typed === '') return { value: undefined };
  const value = /^\d{1,3}(\.\d{1,2})?$/.test(typed) ? Number(typed) : 0;
  return value > 0 ? { value } : { wrong: WRONG_KIT.millimetres };
}

function readWheels(raw: string): Reading<readonly string[] | undefined> {
  const wheels = raw
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  if (wheels.length > MAX_WHEELS) return { wrong: WRONG_KIT.wheels };
  return { value: wheels.length > 0 ? wheels : undefined };
}

interface FieldProps {
  readonly item: KitItem;
  readonly name: string;
  readonly label: string;
  readonly value: string | number | undefined;
  readonly hint?: string;
}

function Text({ item, name, label, value, hint }: FieldProps) {
  return (
    <TextField
      field={`${name} ${item.id}`}
      label={label}
      shown={String(value ?? '')}
      read={readText}
      write={(text) => writeField(item, name, text)}
      {...(hint !== undefined && { hint })}
    />
  );
}

function Millimetres({ item, name, label, value }: FieldProps) {
  return (
    <TextField
      field={`${name} ${item.id}`}
      label={label}
      shown={String(value ?? '')}
      read={readMillimetres}
      write={(mm) => writeField(item, name, mm)}
      numeric
    />
  );
}

interface WholeProps extends FieldProps {
  readonly most?: number;
  readonly wrong?: string;
  /** What an empty field stands for, where it cannot be empty. */
  readonly least?: number;
}

function Whole({
  item,
  name,
  label,
  value,
  hint,
  most = MAX_COUNT,
  wrong = WRONG_KIT.fromOne,
  least,
}: WholeProps) {
  return (
    <TextField
      field={`${name} ${item.id}`}
      label={label}
      shown={String(value ?? '')}
      read={readCountUpTo(most, wrong)}
      write={(number) => writeField(item, name, number ?? least)}
      {...(hint !== undefined && { hint })}
      numeric
    />
  );
}

/** The number of wheels is a short way to say what each shows: the usual symbols. */
function Wheels({ item }: { item: ItemOf<'lock'> }) {
  const usual = usualWheel(item.type);
  const { wheels } = item;
  return (
    <>
      {usual !== undefined && (
        <TextField
          field={`wheels ${item.id}`}
          label={HAVE.wheels}
          shown={wheels ? String(wheels.length) : ''}
          read={readCountUpTo(MAX_WHEELS, WRONG_KIT.wheels)}
          write={(number) =>
            writeField(
              item,
              'wheels',
              number === undefined
                ? undefined
                : Array.from({ length: number }, (_, i) => wheels?.[i] ?? wheels?.at(-1) ?? usual),
            )
          }
          hint={HAVE.wheelsHint}
          numeric
        />
      )}
      <div className="kit-details-wide">
        <TextField
          field={`symbols ${item.id}`}
          label={HAVE.symbols}
          shown={wheels?.join('\n') ?? ''}
          read={readWheels}
          write={(next) => {
            // One line would make it a lock of one wheel, which nobody means.
            const [first = ''] = next ?? [];
            const isForAll = next?.length === 1 && wheels !== undefined && wheels.length > 1;
            writeField(item, 'wheels', isForAll ? wheels.map(() => first) : next);
          }}
          hint={HAVE.symbolsHint}
          lines={Math.max(2, Math.min(6, wheels?.length ?? 0))}
        />
      </div>
    </>
  );
}

function LockDetails({ item }: { item: ItemOf<'lock'> }) {
  const { hasWheels } = fastenerType(item.type);
  const isDevice = item.type === 'typed';
  return (
    <>
      {hasWheels && <Wheels item={item} />}
      {item.type === 'dial' && (
        <Whole item={item} name="marks" label={HAVE.marks} value={item.marks} hint={HAVE.marksHint} />
      )}
      {item.type === 'key' && (
        <>
          <Text
            item={item}
            name="keyedAlike"
            label={HAVE.keyedAlike}
            value={item.keyedAlike}
            hint={HAVE.keyedAlikeHint}
          />
          <Whole item={item} name="keys" label={HAVE.keys} value={item.keys} />
        </>
      )}
      {!isDevice && (
        <>
          <Millimetres item={item} name="shackleMm" label={HAVE.shackle} value={item.shackleMm} />
          <Millimetres item={item} name="clearanceMm" label={HAVE.clearance} value={item.clearanceMm} />
        </>
      )}
    </>
  );
}

function BoxDetails({ item }: { item: ItemOf<'box'> }) {
  const id = useId();
  return (
    <>
      <div>
        <label className="label" htmlFor={id}>
          {HAVE.takes}
        </label>
        <select
          id={id}
          className="field"
          value={item.takes ?? ''}
          onChange={({ target }) => writeField(item, 'takes', target.value || undefined)}
        >
          {Object.entries(HAVE.takesNames).map(([value, name]) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <Millimetres item={item} name="holeMm" label={HAVE.hole} value={item.holeMm} />
      <Millimetres item={item} name="roundMm" label={HAVE.round} value={item.roundMm} />
    </>
  );
}

function OwnDetails({ item }: { item: KitItem }) {
  switch (item.what) {
    case 'lock':
      return <LockDetails item={item} />;
    case 'box':
      return <BoxDetails item={item} />;
    case 'hasp':
      return (
        <>
          <Whole item={item} name="holes" label={HAVE.holes} value={item.holes} least={1} />
          <Millimetres item={item} name="holeMm" label={HAVE.hole} value={item.holeMm} />
        </>
      );
    case 'tool':
      return (
        <label className="kit-choice">
          <input
            type="checkbox"
            checked={item.batteries === true}
            onChange={({ target }) => writeField(item, 'batteries', target.checked || undefined)}
          />
          {HAVE.batteries}
        </label>
      );
  }
}

export function ItemDetails({ item }: { item: KitItem }) {
  return (
    <div className="kit-details">
      <TextField
        field={`label ${item.id}`}
        label={HAVE.label}
        shown={item.label}
        read={(raw) => ({ value: raw })}
        write={(label) => writeField(item, 'label', label)}
        hint={HAVE.labelHint}
      />
      <OwnDetails item={item} />
      <Text item={item} name="note" label={HAVE.note} value={item.note} />
    </div>
  );
}
