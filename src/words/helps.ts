/** What helps most: each change, what it does to the game, and the figures before and after. */

import { OFTEN_ENOUGH } from '../findings/timed/too-long.ts';
import type { Game } from '../game/model.ts';
import type { Help } from '../helps/help.ts';
import { isBeyondNoise } from '../helps/trial.ts';
import type { Helpful, WhatHelps } from '../helps/what-helps.ts';
import { lessonsFinish, shareInTen } from './chance.ts';
import { count, minutesInWords } from './numbers.ts';
import { capital, sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

export const HELPS = {
  title: 'What helps most',
  progress: 'Single changes are being tried.',
  old: 'From before the change; it is being worked out anew.',
  blocked: 'Changes are tried as soon as nothing stops the game.',
  failed: 'It cannot be worked out here.',
  show: 'Show',
};

/** The game as it would be, in a few words: "Window sill a minute shorter". */
function subject(game: Game, help: Help): Sentence {
  const say = sayer(game);
  switch (help.code) {
    case 'shorten':
      return sentence(
        say.name(help.values.step),
        help.values.by === 'minute' ? ' a minute shorter' : ' in half the time',
      );
    case 'lengthen':
      return sentence(say.name(help.values.step), ' a minute longer');
    case 'shareMore':
      return sentence('one more of ', say.name(help.values.thing), ' to share');
    case 'askForFewer':
      return sentence(
        say.name(help.values.puzzle),
        ` with any ${help.values.need} of ${help.values.of}, not all`,
      );
    case 'leaveOut':
      return help.values.others.length === 0
        ? sentence(say.name(help.values.step), ' not today')
        : sentence(say.name(help.values.step), ' not today, nor ', say.names(help.values.others));
    case 'putEarlier':
      return sentence(say.name(help.values.thing), ' in ', say.name(help.values.holder));
    case 'setTeams':
      return [`${count(help.values.teams, 'team')} instead of ${help.values.before}`];
    case 'takeOut':
      return sentence(say.name(help.values.box), ' not in ', say.name(help.values.from), ' but beside it');
    case 'rehang':
      return sentence(say.name(help.values.lock), ' moved to ', say.name(help.values.box));
  }
}

/** What a press does. */
export function helpLabel(game: Game, help: Help): string {
  const name = (id: string) =>
    sayer(game)
      .name(id)
      .map((part) => (typeof part === 'string' ? part : 'text' in part ? part.text : ''))
      .join('');
  switch (help.code) {
    case 'shorten':
      return help.values.by === 'minute' ? 'Make it a minute shorter' : 'Halve its minutes';
    case 'lengthen':
      return 'Make it a minute longer';
    case 'shareMore':
      return `Have ${help.values.shared} of it`;
    case 'askForFewer':
      return `Let any ${help.values.need} be enough`;
    case 'leaveOut':
      return 'Not today';
    case 'putEarlier':
      return `Put it in ${name(help.values.holder)}`;
    case 'setTeams':
      return `Play in ${count(help.values.teams, 'team')}`;
    case 'takeOut':
      return help.values.holder === undefined
        ? 'Put it on the tables'
        : `Put it in ${name(help.values.holder)}`;
    case 'rehang':
      return `Hang it on ${name(help.values.box)}`;
  }
}

/** "about 8 lessons in 10 finish in time instead of 6"; nothing where both are told by one word. */
function chances(before: number, after: number): string[] {
  const [was, is] = [shareInTen(before), shareInTen(after)];
  if (was === is) return [];
  const both = was.endsWith(' in 10') && is.endsWith(' in 10');
  return [`${lessonsFinish(after)} in time instead of ${both ? was.replace(/^about | in 10$/g, '') : was}`];
}

/** "a pupil waits 3.2 minutes instead of 5.1"; nothing where both are told by one figure. */
function minutesTold(what: string, before: number, after: number): string[] {
  const [was, is] = [minutesInWords(before), minutesInWords(after)];
  if (was === is) return [];
  const both = was.endsWith(' minutes') && is.endsWith(' minutes');
  return [`${what} ${is} instead of ${both ? was.replace(/ minutes$/, '') : was}`];
}

/** Chance and waiting, each only where the change touches it beyond noise; where neither shows in words, the time that half of the lessons take. */
function figures({ before }: WhatHelps, { after, effect }: Helpful): string {
  const told = [
    ...(isBeyondNoise(effect.inTime) ? chances(before.inTime, after.inTime) : []),
    ...(isBeyondNoise(effect.waiting) ? minutesTold('a pupil waits', before.waiting, after.waiting) : []),
  ];
  const parts = told.length > 0 ? told : minutesTold('half of the lessons take', before.median, after.median);
  return parts.length > 0 ? `${parts.join('; ')}.` : 'a few more lessons finish in time.';
}

/** "Window sill a minute shorter: about 8 lessons in 10 finish in time instead of 6; a pupil waits 3.2 minutes instead of 5.1." */
export function helpSentence(game: Game, all: WhatHelps, one: Helpful): Sentence {
  return capital(sentence(subject(game, one.help), ': ', figures(all, one)));
}

/** When nothing that was tried helps. */
export function nothingHelps({ before, tried }: WhatHelps): string {
  const changes =
    tried === 1 ? 'The single change that was tried' : `None of ${tried} single changes that were tried`;
  const verb = tried === 1 ? 'does not help' : 'helps';
  if (tried === 0) return 'There is no single change to try.';
  if (before.inTime >= 1) return `${changes} ${verb} much: all lessons finish in time already.`;
  return `${changes} ${verb} much. It takes several together.`;
}

/** Before the list, where fewer than half of the lessons end in time and would with any one of its changes. */
export function noneIsEnough({ before, helpful }: WhatHelps): string | undefined {
  const isEnough = [before, ...helpful.map(({ after }) => after)].some(
    ({ inTime }) => inTime >= OFTEN_ENOUGH,
  );
  return isEnough ? undefined : 'No single change is enough; several together may be.';
}
