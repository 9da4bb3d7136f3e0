/** The list of keys: every command that has some. */
import { KEYS, keyName } from '../../src/words/screen-commands.ts';
import { Dialog } from '../shell/Dialog.tsx';
import { isMac } from './keyboard.ts';
import { useKeys } from './keys-dialog.ts';
import { COMMAND_LIST, situation } from './registry.ts';
import './key-list.css';

function Keys({ keys }: { keys: readonly string[] }) {
  return keys.map((key, i) => (
    <span key={key}>
      {i > 0 && ` ${KEYS.or} `}
      <kbd>{key}</kbd>
    </span>
  ));
}

export default function KeyList() {
  const now = situation();
  const mac = isMac();
  return (
    <Dialog title={KEYS.title} close={KEYS.close} onClose={() => useKeys.setState({ open: false })}>
      <p className="quiet">{KEYS.hint}</p>
      <table className="key-list">
        <tbody>
          {KEYS.onMap.map(({ keys, what }) => (
            <tr key={keys}>
              <th scope="row">{what}</th>
              <td>
                <Keys keys={[keys]} />
              </td>
            </tr>
          ))}
          {COMMAND_LIST.filter((command) => command.keys.length > 0).map((command) => (
            <tr key={command.name}>
              <th scope="row">{command.label(now)}</th>
              <td>
                <Keys keys={command.keys.map((key) => keyName(key, mac))} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Dialog>
  );
}
