/** How a game gets to a colleague. */
import { Popover } from 'radix-ui';
import { SHARE } from '../../src/words/screen.ts';
import { saveToFile } from '../keep/index.ts';
import './share-menu.css';

export function ShareMenu() {
  return (
    <Popover.Root>
      <Popover.Trigger className="button button-main button-large">{SHARE.share}</Popover.Trigger>
      <Popover.Portal>
        <Popover.Content
          className="share-menu"
          align="end"
          sideOffset={6}
          collisionPadding={8}
          aria-label={SHARE.share}
        >
          <p>{SHARE.line}</p>
          <Popover.Close className="button button-main" onClick={() => void saveToFile()}>
            {SHARE.save}
          </Popover.Close>
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}
