/** What is short, what may be done about it, and what comes of it. */
import type { Game } from '../game/model.ts';
import type { LikeKeys, LoosePin } from '../kit/fit/index.ts';
import type { KitItem } from '../kit/model.ts';
import type { Remedy, Shortage } from '../kit/remedies/index.ts';
import { lockName, withArticle } from './kinds.ts';
import { count, minutesInWords, numberWord } from './numbers.ts';
import { capital, sayer, sentence } from './say.ts';
import { itemKind, itemTitle } from './screen-kit.ts';
import { plain, type Sentence } from './sentence.ts';

/** "of 4 there are 2", "of 4 there is none". */
function thereAre({ copies, missing }: Shortage): string {
  const there = copies - missing;
  const verb = there === 1 ? 'is' : 'are';
  if (copies === 1) return 'there is none';
  return there === 0 ? `of ${copies} there is none` : `of ${copies} there ${verb} ${there}`;
}

/** "For Green tin lock on Green tin: of 4 there are 2 that fit." */
export function shortageSentence(game: Game, shortage: Shortage): Sentence {
  const say = sayer(game);
  switch (shortage.part) {
    case 'lock':
      return capital(sentence(say.the(shortage.node), `: ${thereAre(shortage)} that can be set to it.`));
    case 'box':
      return sentence('Boxes for ', say.name(shortage.node), `: ${thereAre(shortage)} that fit.`);
    case 'hasp':
      return sentence('Hasps for ', say.name(shortage.node), `: ${thereAre(shortage)} with holes enough.`);
    case 'tool':
      return sentence(say.title(shortage.node), `: ${thereAre(shortage)}.`);
  }
}

/** Before all of them. */
export function shortSummary(missing: number, teams: number): string {
  const who = count(teams, 'team');
  return missing === 0
    ? `The kit has all that this game needs for ${who}.`
    : `For ${who} the kit lacks ${count(missing, 'thing')}.`;
}

/** "word lock, 4 wheels", "word lock, 4 wheels, “red”": label and kind, so that it is found. */
function nameIn(items: readonly KitItem[], id: string, type: string): string {
  const item = items.find((one) => one.id === id);
  if (!item) return lockName(type);
  const label = item.label.trim();
  return item.what === 'tool' || label === '' ? itemTitle(item) : `${itemKind(item)}, “${label}”`;
}

/** What a press does. @param items of the kit */
export function remedyLabel(game: Game, items: readonly KitItem[], remedy: Remedy): string {
  const say = sayer(game);
  switch (remedy.code) {
    case 'otherLock':
      return `Use ${withArticle(nameIn(items, remedy.values.item, remedy.values.type))}`;
    case 'otherCode':
      return `Use ${withArticle(nameIn(items, remedy.values.item, remedy.values.type))}: a new code and a legend`;
    case 'codeForKey':
      return `Use ${withArticle(nameIn(items, remedy.values.item, remedy.values.type))}: a code in place of the key`;
    case 'share':
      return remedy.values.shared === 1
        ? `Let the teams share one`
        : `Let the teams share ${numberWord(remedy.values.shared)}`;
    case 'standIn':
      return remedy.values.box
        ? 'Use an envelope'
        : `Let the teacher open ${plain(say.names(remedy.values.fasteners))}`;
    case 'leaveOut':
      return plain(sentence('Do without ', say.name(remedy.values.thing), ' today'));
    case 'buy':
      return `Put ${count(remedy.values.count, 'on', 'on')} the list to buy`;
  }
}

/** What comes of it. */
export function remedySentence(game: Game, remedy: Remedy): Sentence {
  const say = sayer(game);
  switch (remedy.code) {
    case 'otherLock':
      return sentence('It carries the same code. Nothing else changes.');
    case 'otherCode': {
      const { before, code, fastener } = remedy.values;
      const box = game.nodes.get(fastener);
      return sentence(
        'The code ',
        { code: before },
        ' becomes ',
        { code },
        '. A legend ',
        box?.kind === 'fastener' ? sentence('beside ', say.name(box.on)) : '',
        ' and one short puzzle turn the one into the other; every answer stays.',
      );
    }
    case 'codeForKey':
      return sentence(
        'In place of ',
        say.name(remedy.values.key),
        ' a tag with the code ',
        { code: remedy.values.code },
        ' is found.',
      );
    case 'share': {
      const { thing, shared, teams, minutes } = remedy.values;
      const what = sentence(
        `${capitalised(numberWord(teams))} teams take turns at ${shared === 1 ? 'one' : numberWord(shared)} of `,
        say.name(thing),
      );
      if (minutes === undefined) return sentence(what, '.');
      return minutes < 0.05
        ? sentence(what, '; half of the lessons take no longer.')
        : sentence(what, `; half of the lessons take ${minutesInWords(minutes)} longer.`);
    }
    case 'standIn':
      return remedy.values.box
        ? sentence(
            'The teacher hands over an envelope with what is in ',
            say.name(remedy.values.container),
            ' when pupils show what would open it.',
          )
        : sentence(
            'No lock: pupils show the teacher what would open it, and wait until the teacher has time.',
          );
    case 'leaveOut': {
      const { others } = remedy.values;
      return others.length === 0
        ? sentence('Nothing else changes; it can be brought back.')
        : sentence('With it go ', say.names(others), ', which would lead nowhere.');
    }
    case 'buy': {
      const { item, count: more } = remedy.values;
      return sentence(`${more} × ${nameIn([item], item.id, '')}. It is short until it is there.`);
    }
  }
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A key that opens more than it should, since padlocks in the kit have like keys. */
export function likeKeysSentence(game: Game, { group, key, lock }: LikeKeys): Sentence {
  const say = sayer(game);
  return sentence(
    'The key to ',
    say.name(key),
    ' opens ',
    say.name(lock),
    ` too, and before its time: the keys of “${group}” are alike.`,
  );
}

export function loosePinSentence(
  game: Game,
  items: readonly KitItem[],
  { node, item, why }: LoosePin,
): Sentence {
  const say = sayer(game);
  const name = nameIn(items, item, '');
  const reason = {
    gone: 'it is not in the kit any more',
    taken: 'others have all of it',
    type: 'another type is needed there now',
    code: 'it cannot be set to the code',
    shackle: 'its shackle does not go through the hole',
    clearance: 'its shackle leaves too little room',
    takes: 'it takes fewer locks than hang there',
    holes: 'it has too few holes',
  }[why];
  return sentence(`${capitalised(name)} is not kept at `, say.name(node), `: ${reason}.`);
}

/** Why one thing of the kit cannot serve at a place of the game. */
export function unfitText(why: LoosePin['why']): string {
  switch (why) {
    case 'gone':
      return 'not in the kit';
    case 'taken':
      return 'all in use';
    case 'type':
      return 'another type';
    case 'code':
      return 'cannot show the code';
    case 'shackle':
      return 'shackle too thick for the hole';
    case 'clearance':
      return 'too little room in the shackle';
    case 'takes':
      return 'takes too few locks';
    case 'holes':
      return 'too few holes';
  }
}
