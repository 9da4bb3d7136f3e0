/** What is short, what may be done about it, and what comes of it. */
import type { Game } from '../game/model.ts';
import type { LikeKeys, LoosePin } from '../kit/fit/index.ts';
import type { Nearest } from '../kit/fit/nearest.ts';
import type { KitItem } from '../kit/model.ts';
import type { Remedy, RemedyValues, Shortage } from '../kit/remedies/index.ts';
import { lockName, withArticle } from './kinds.ts';
import { misfitsClause } from './lock-codes.ts';
import { count, minutesInWords, numberWord } from './numbers.ts';
import { capital, sayer, sentence } from './say.ts';
import { itemKind, itemTitle } from './screen-kit.ts';
import { plain, type Sentence } from './sentence.ts';

/** "4 needed, 2 free", "4 needed, none free": what another place has is not free. */
function needed({ copies, missing }: Shortage): string {
  return `${copies} needed, ${missing === copies ? 'none' : copies - missing} free`;
}

/** "The key lock on Green tin: 4 needed, 2 free that fit." */
export function shortageSentence(game: Game, shortage: Shortage): Sentence {
  const say = sayer(game);
  const fits = shortage.copies - shortage.missing > 1 ? 'fit' : 'fits';
  switch (shortage.part) {
    case 'lock':
      return capital(sentence(say.the(shortage.node), `: ${needed(shortage)} that ${fits}.`));
    case 'box':
      return sentence('Boxes for ', say.name(shortage.node), `: ${needed(shortage)} that ${fits}.`);
    case 'hasp':
      return sentence('Hasps for ', say.name(shortage.node), `: ${needed(shortage)} with holes enough.`);
    case 'tool':
      return sentence(say.title(shortage.node), `: ${needed(shortage)}.`);
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

/** "one box (Green tin)", "two tools (UV lamp)". */
function sharedThings(game: Game, { thing, shared }: RemedyValues['share']): string {
  const node = game.nodes.get(thing);
  const kind = node?.kind === 'tool' ? (['tool', 'tools'] as const) : (['box', 'boxes'] as const);
  const name = node?.name.trim() ?? '';
  return `${numberWord(shared)} ${kind[shared === 1 ? 0 : 1]}${name === '' ? '' : ` (${name})`}`;
}

/** "4 picture locks", "2 lamps or tools (UV lamp)". */
function toBuyText(item: KitItem, more: number): string {
  switch (item.what) {
    case 'lock':
      return count(more, lockName(item.type));
    case 'box':
      return count(more, 'box', 'boxes');
    case 'hasp':
      return count(more, 'hasp');
    case 'tool': {
      const label = item.label.trim();
      return `${count(more, 'lamp or tool', 'lamps or tools')}${label === '' ? '' : ` (${label})`}`;
    }
  }
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
      return `Let the teams share ${sharedThings(game, remedy.values)}`;
    case 'standIn':
      return remedy.values.box
        ? 'Use an envelope'
        : `Let the teacher stand in for ${plain(say.names(remedy.values.fasteners))}`;
    case 'lend':
      return plain(sentence('Let the teacher lend ', say.name(remedy.values.tool)));
    case 'leaveOut':
      return plain(sentence('Do without ', say.name(remedy.values.thing), ' today'));
    case 'buy':
      return `Put ${toBuyText(remedy.values.item, remedy.values.count)} on the list to buy`;
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
      const them = shared === 1 ? 'it' : 'them';
      const locks = game.nodes.get(thing)?.kind === 'container' ? ` and what hangs on ${them}` : '';
      const what = `${capitalised(numberWord(teams))} teams take turns at ${them}${locks}`;
      if (minutes === undefined) return sentence(what, '.');
      const longer = minutes < 0.05 ? 'no longer' : `${minutesInWords(minutes)} longer`;
      return sentence(what, `; a typical lesson takes ${longer}.`);
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
    case 'lend':
      return sentence('Pupils ask the teacher, who lends one or shows what it would show.');
    case 'leaveOut': {
      const { others } = remedy.values;
      return others.length === 0
        ? sentence('Nothing else changes; it can be brought back.')
        : sentence('With it go ', say.names(others), ', which would lead nowhere.');
    }
    case 'buy': {
      const { item, count: more } = remedy.values;
      return sentence(`${more} × ${nameIn([item], item.id, '')}. Short until marked as bought.`);
    }
  }
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A key that opens more than it should, since padlocks in the kit have like keys. */
export function likeKeysSentence(game: Game, { group, key, lock, isTooSoon }: LikeKeys): Sentence {
  const say = sayer(game);
  if (!isTooSoon) {
    return sentence(
      `The keys of “${group}” are alike: one key opens `,
      say.name(key),
      ' and ',
      say.name(lock),
      '.',
    );
  }
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

/** What keeps the nearest lock of the type from the code: "brass: wheel 1 has no Q (…)." */
export function nearestText({ item, misfits }: Nearest): string {
  return `${capitalised(itemTitle(item))}: ${misfitsClause(misfits, item.type)}.`;
}
