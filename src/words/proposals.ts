/** What a proposal does to the game: the words on its button. */
import type { Proposal, ProposalWith } from '../findings/proposal.ts';
import type { Game } from '../game/model.ts';
import { lockName } from './kinds.ts';
import { type Say, sayer, sentence } from './say.ts';
import { codeInWords, plain, type Sentence } from './sentence.ts';

export function proposalLabel(game: Game, proposal: Proposal): string {
  return plain(label(game, proposal));
}

/** "Set the lock to 4726, and let Moon puzzle give 26"; where it is the whole code, "… give it". */
function longerCode(say: Say, { values }: ProposalWith<'longerCode'>): Sentence {
  const { code, answers } = values;
  const given = answers.map(({ source, answer }) =>
    sentence(say.name(source), answer === code ? ' give it' : ` give ${codeInWords(answer)}`),
  );
  return sentence(
    `Set the lock to ${codeInWords(code)}`,
    ...given.flatMap((one, i) => [i === 0 ? ', and let ' : ', ', one]),
  );
}

function label(game: Game, proposal: Proposal): Sentence {
  const say = sayer(game);
  switch (proposal.code) {
    case 'putIn':
      return sentence('Put it in ', say.name(proposal.values.holder));
    case 'putInHand':
      return ['Give it out at the start'];
    case 'setCode':
      return [`Set the lock to ${codeInWords(proposal.values.code)}`];
    case 'newCode': {
      const { code, sources } = proposal.values;
      return sources.length === 0
        ? [`Set the lock to ${codeInWords(code)}`]
        : sentence(
            `Set the lock to ${codeInWords(code)}, and let `,
            say.names(sources),
            sources.length === 1 ? ' give it' : ' give their part of it',
          );
    }
    case 'otherType':
      return [`Make it a ${lockName(proposal.values.type)}`];
    case 'setAnswer':
      return sentence(
        'Let ',
        say.name(proposal.values.source),
        ` give ${codeInWords(proposal.values.answer)}`,
      );
    case 'lowerNeed':
      return [`Let it need only ${proposal.values.need}`];
    case 'needAll':
      return [
        proposal.values.possible === 0
          ? 'Let it need nothing'
          : proposal.values.possible === 1
            ? 'Let it need the one that leads to it'
            : 'Let it need all that leads to it',
      ];
    case 'markDecoy':
      return ['Mark it as a red herring'];
    case 'bringBack':
      return sentence('Use ', say.names(proposal.values.nodes), ' today');
    case 'link':
      return sentence(
        'Draw an arrow from ',
        say.name(proposal.values.from),
        ' to ',
        say.name(proposal.values.to),
      );
    case 'unlink':
      return sentence(
        'Remove the arrow from ',
        say.name(proposal.values.from),
        ' to ',
        say.name(proposal.values.to),
      );
    case 'addPrize':
      return sentence('Put a prize in ', say.name(proposal.values.holder));
    case 'longerCode':
      return longerCode(say, proposal);
    case 'joinParts':
      return sentence(
        'Let ',
        say.names(proposal.values.others),
        ' lead to ',
        say.name(proposal.values.puzzle),
        `, which gives ${codeInWords(proposal.values.answer)}`,
      );
    case 'lockAway':
      return [`Put what lies there in a box locked with ${codeInWords(proposal.values.code)}`];
    case 'ownKeys':
      return sentence(
        proposal.values.fasteners.length === 1 ? 'Give ' : 'Give each of ',
        say.names(proposal.values.fasteners),
        ' a key of its own',
      );
    case 'wholeAnswer':
      return sentence('Let ', say.name(proposal.values.source), ' give the whole code');
  }
}
