/** A command as a button needs it: what it is called, whether it applies, what its keys are. */
import { useSyncExternalStore } from 'react';
import { keyName } from '../../src/words/screen-commands.ts';
import { useGame } from '../store/game.ts';
import { useTidying } from '../store/tidying.ts';
import { useView } from '../store/view.ts';
import { isMac } from './keyboard.ts';
import { type CommandName, command, situation } from './registry.ts';

function subscribe(changed: () => void): () => void {
  const stopGame = useGame.subscribe(changed);
  const stopView = useView.subscribe(changed);
  const stopTidying = useTidying.subscribe(changed);
  return () => {
    stopTidying();
    stopGame();
    stopView();
  };
}

export interface OfferedCommand {
  readonly label: string;
  readonly enabled: boolean;
  readonly keys: string | undefined;
  readonly run: () => void;
}

export function useCommand(name: CommandName): OfferedCommand {
  const { label, when, keys, run } = command(name);
  const [first] = keys;
  return {
    label: useSyncExternalStore(subscribe, () => label(situation())),
    enabled: useSyncExternalStore(subscribe, () => when(situation())),
    keys: first === undefined ? undefined : keyName(first, isMac()),
    run,
  };
}
