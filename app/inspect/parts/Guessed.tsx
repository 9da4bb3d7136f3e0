/** Whether a lock can be guessed: what the engine reckons, folded as long as solving is quicker. */
import type { Guess } from '../../../src/engine/guess/guess.ts';
import { fastenerType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { codesInAll, GUESS, guessSaid, isOpen, stageTold } from '../../../src/words/form-guess.ts';
import { sayer } from '../../../src/words/say.ts';
import { SentenceText } from '../../shell/SentenceText.tsx';
import { useAssessment } from '../../store/assessment.ts';
import { Fold } from '../Fold.tsx';
import { Section } from '../Section.tsx';
import { FindingsHere, useFindingsHere } from './FindingsHere.tsx';
import './guessed.css';

export function Guessed({ node }: { node: NodeOf<'fastener'> }) {
  const { network, context } = useAssessment();
  const told = useFindingsHere({ ids: [node.id], of: 'guess' });
  const guess = context.guesses().locks.get(network.index.get(node.id) ?? -1);
  if (told.length > 0) {
    return (
      <Section title={GUESS.heading}>
        <FindingsHere ids={[node.id]} of="guess" />
        {guess && <Reckoned node={node} guess={guess} told />}
      </Section>
    );
  }
  if (!guess) return null;
  const length = lengthOf(node);
  return (
    <Fold title={GUESS.heading} said={guessSaid(guess, { type: node.type, length })}>
      <Reckoned node={node} guess={guess} told={false} />
    </Fold>
  );
}

/** In symbols. */
function lengthOf({ type, code = '' }: NodeOf<'fastener'>): number {
  return fastenerType(type).symbols(code).length;
}

/** `told`: the worst of it stands above. */
function Reckoned({ node, guess, told }: { node: NodeOf<'fastener'>; guess: Guess; told: boolean }) {
  const { game, context } = useAssessment();
  const say = sayer(game);
  const length = lengthOf(node);
  const stages = isOpen(guess, length) ? [] : guess.stages;
  return (
    <>
      <p className="guessed-line">{codesInAll(guess, { type: node.type, length })}</p>
      {guess.stages.length === 0 && <p>{GUESS.never}</p>}
      {stages.map((stage) => (
        <p key={stage.known.join(' ')} className="guessed-line">
          <SentenceText
            sentence={stageTold(say, stage, {
              skips: told && stage === guess.worst ? [] : stage.skips.map(context.idOf),
              length,
            })}
            leads
          />
        </p>
      ))}
    </>
  );
}
