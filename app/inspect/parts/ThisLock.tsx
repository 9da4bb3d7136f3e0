/** What the lock itself is like, where that matters: folded until it is wanted, its few words beside the heading. */
import { fastenerType, isKnownType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { HARDWARE, hardwareSaid } from '../../../src/words/form-hardware.ts';
import { codeShownText, lockSettingText } from '../../../src/words/lock-types.ts';
import { Fold } from '../Fold.tsx';
import { TextField } from '../TextField.tsx';
import { Tick } from '../Tick.tsx';
import { chooseField } from '../write.ts';
import { alphabetOf, readMarks, readSeconds, setHardware } from './hardware.ts';
import { Wheels } from './Wheels.tsx';

const usualMarks = fastenerType('dial').wheel(0)?.length;

export function ThisLock({ node }: { node: NodeOf<'fastener'> }) {
  const { hardware, forFun = false } = node;
  const type = node.type ?? '';
  const { opensWith, hasWheels } = fastenerType(type);
  const isTried = isKnownType(type) && opensWith !== 'nothing';
  const said = hardwareSaid({
    wheels: hasWheels ? hardware?.wheels?.length : undefined,
    alphabet: hasWheels ? alphabetOf(hardware?.wheels) : undefined,
    marks: type === 'dial' ? hardware?.marks : undefined,
    trySeconds: isTried ? hardware?.trySeconds : undefined,
    forFun,
  });
  return (
    <Fold title={HARDWARE.heading} said={said === '' ? undefined : said}>
      {hasWheels && <Wheels node={node} />}
      {type === 'dial' && (
        <div className="form-short">
          <TextField
            field={`marks ${node.id}`}
            label={HARDWARE.marks}
            shown={hardware?.marks === undefined ? '' : String(hardware.marks)}
            read={readMarks}
            write={(marks) => setHardware(node, { marks }, `marks ${node.id}`)}
            placeholder={String(usualMarks)}
            numeric
          />
        </div>
      )}
      {isTried && (
        <div className="form-short">
          <TextField
            field={`trySeconds ${node.id}`}
            label={HARDWARE.trySeconds}
            shown={hardware?.trySeconds === undefined ? '' : String(hardware.trySeconds)}
            read={readSeconds}
            write={(trySeconds) => setHardware(node, { trySeconds }, `trySeconds ${node.id}`)}
            placeholder={String(fastenerType(type).trySeconds)}
            numeric
          />
        </div>
      )}
      {opensWith === 'code' && (
        <>
          <p className="hint">
            <strong>{HARDWARE.onPaper}</strong> {codeShownText(type)}
          </p>
          <p className="hint">
            <strong>{HARDWARE.setting}</strong> {lockSettingText(type)}
          </p>
        </>
      )}
      <div>
        <Tick
          label={HARDWARE.forFun}
          ticked={forFun}
          onTick={(ticked) => chooseField(node.id, 'forFun', ticked || undefined)}
        />
        <p className="hint">{HARDWARE.forFunHint}</p>
      </div>
    </Fold>
  );
}
