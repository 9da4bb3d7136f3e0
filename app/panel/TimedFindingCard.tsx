/** One finding from simulated lessons. */
import type { TimedFinding } from '../../src/findings/timed/timed-finding.ts';
import { timedSentence } from '../../src/words/findings/timed.ts';
import { useGame } from '../store/game.ts';
import { Told } from './FindingCard.tsx';

export default function TimedFindingCard({ finding }: { finding: TimedFinding }) {
  const game = useGame((state) => state.game);
  return <Told finding={finding} sentence={timedSentence(game, finding)} />;
}
