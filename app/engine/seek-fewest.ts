/**
 * Asks a worker for the fewest steps after each edit. One question is under way at a time and only the newest waits
 * behind it, so that fast typing never queues up work for games that are gone.
 */
import type { Fewest } from '../../src/engine/measures.ts';
import { startHelper } from '../parts/helper.ts';
import { part } from '../parts/part.ts';
import { currentAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { whenWordsCome } from '../word-list/word-list.ts';
import { type FewestAnswer, type FewestQuestion, useKnown } from './fewest.ts';
import script from './fewest.worker.ts?worker&url';

/** Search nodes where there is no worker: the page may not stand still for longer than a blink. */
const BUDGET_ON_THE_PAGE = 2_000;

/** For where no worker runs, which is hardly ever. */
const SEARCH = part(() => import('../../src/engine/fewest.ts'));

/** Starts answering; called once when the page starts. Where no worker runs, the page searches itself, and less far. */
export function startFewest(): void {
  let helper = startHelper<FewestQuestion, FewestAnswer>(script);
  let tickets = 0;
  let underWay: FewestQuestion | undefined;

  const answered = (fewest: Fewest) => {
    useKnown.setState({ network: underWay?.network, fewest });
    underWay = undefined;
  };
  const searchOnThePage = async (question: FewestQuestion) => {
    const search = await SEARCH.load();
    if (!search) {
      underWay = undefined;
      return;
    }
    answered(search.fewestSteps(question.network, question.measures, BUDGET_ON_THE_PAGE));
    ask();
  };
  const put = (question: FewestQuestion) => {
    if (helper) helper.put(question);
    else void searchOnThePage(question);
  };
  const ask = () => {
    const { network, measures } = currentAssessment();
    if (underWay || !measures.solvable || useKnown.getState().network === network) return;
    tickets += 1;
    const { longestChain, mustDo } = measures;
    underWay = { ticket: tickets, network, measures: { longestChain, mustDo } };
    put(underWay);
  };

  if (helper) {
    helper.hear = ({ ticket, fewest }) => {
      if (ticket !== underWay?.ticket) return;
      answered(fewest);
      ask();
    };
    helper.lost = () => {
      helper = undefined;
      if (underWay) put(underWay);
    };
  }
  useGame.subscribe((state, before) => {
    if (state.game !== before.game) ask();
  });
  whenWordsCome(ask);
  ask();
}
