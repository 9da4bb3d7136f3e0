/** Every command with its keys, to be read and to be pressed: without a keyboard too, everything can be done. */
import { KEYS, keyName } from '../../src/words/screen-commands.ts';
import { Dialog } from '../shell/Dialog.tsx';
import { useKeyList } from './key-list.ts';
import { isMac } from './keyboard.ts';
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

function close(): void {
  useKeyList.setState({ open: false });
}

export default function KeyList() {
  const now = situation();
  const mac = isMac();
  return (
    <Dialog title={KEYS.title} close={KEYS.close} onClose={close}>
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
          {COMMAND_LIST.filter((command) => command.name !== 'keys').map((command) => (
            <tr key={command.name}>
              <th scope="row">
                <button
                  type="button"
                  className="word-link"
                  disabled={!command.when(now)}
                  onClick={() => {
                    close();
                    command.run();
                  }}
                >
                  {command.label(now)}
                </button>
              </th>
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
