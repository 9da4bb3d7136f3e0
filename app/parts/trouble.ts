/** What the head says of a part that could not be had or has stopped: until the game changes, or the part is there. */
import { create } from 'zustand';
import type { Game } from '../../src/game/model.ts';
import { useGame } from '../store/game.ts';

interface Trouble {
  readonly sentence: string | undefined;
  /** The one that was open when it was said. */
  readonly game: Game | undefined;
}

const NONE: Trouble = { sentence: undefined, game: undefined };

const useTrouble = create<Trouble>()(() => NONE);

export function tellTrouble(sentence: string): void {
  useTrouble.setState({ sentence, game: useGame.getState().game });
}

/** Takes it back if it is what is being said. */
export function forgetTrouble(sentence: string): void {
  if (useTrouble.getState().sentence === sentence) useTrouble.setState(NONE);
}

/** The sentence to say now. */
export function useTroubleNews(): string | undefined {
  const open = useGame((state) => state.game);
  const { sentence, game } = useTrouble();
  return game === open ? sentence : undefined;
}
