/**
 * One lesson played through: pupils take up open steps at random until every prize is reached.
 * Method: discrete events. At time 0 and whenever something ends, is given out or comes free, what ends at that instant is reached, then all that
 * takes no time and can be reached; then teams choose. Counters as in chain-forward (reach.ts) keep a run linear in nodes and links, but for the
 * choosing: one word for each open step and choice.
 * Above 400 lines because it is one loop over one state: parts of it in other files would have to be handed twenty arrays.
 * All arrays are made once. They have `size` (nodes) or `count` (events) entries for each team, one team after the other; 'slot' is such a place.
 */

import { Adults } from './adults.ts';
import { Calendar } from './calendar.ts';
import type { Clock } from './clock.ts';
import { Copies } from './copies.ts';
import { Draws } from './draws.ts';
import type { RunLog, Waited } from './model.ts';
import { classesOf, type Plan, planOf } from './plan.ts';
import type { Rules } from './rules.ts';
import type { Tally } from './tally.ts';

/** Two sums of minutes nearer than this are the same instant. */
export const INSTANT = 1e-6;
const NEVER = Number.POSITIVE_INFINITY;

/** What happens at a minute: the work on a slot ends, a hint for it is asked for, an adult has checked it, the teacher gives it away. */
const WORKED = 0;
const ASKED = 1;
const CHECKED = 2;
const CUT = 3;
const HAPPENINGS = 4;

/** A step that the teacher gives away at a minute, to every team that has not done it by then. */
export interface Cut {
  readonly step: number;
  readonly minute: number;
}

export class Player {
  readonly teams: number;
  /** Of the last run: by team, when every prize was reached; Infinity where that never came. */
  readonly ends: Float64Array;
  /** Of the last run, by slot: see RunLog. */
  readonly possible: Float64Array;
  readonly begin: Float64Array;
  readonly free: Float64Array;
  readonly pupils: Int32Array;
  readonly reached: Float64Array;
  /** Of the last run, by slot: when a container was at hand. */
  readonly atHand: Float64Array;

  readonly #clock: Clock;
  readonly #plan: Plan;
  readonly #size: number;
  readonly #count: number;
  readonly #isStep: Uint8Array;
  readonly #hands: Int32Array;
  readonly #newestFirst: boolean;
  readonly #isRanked: boolean;
  readonly #classes: Int32Array;
  readonly #draws: Draws;
  readonly #calendar: Calendar;
  readonly #tally: Tally | undefined;
  readonly #copies: Copies | undefined;
  readonly #adults: Adults | undefined;
  readonly #checked: Uint8Array | undefined;
  readonly #hints: number;

  /** All that a run changes and the next one begins anew with, and how it then is; the arrays by slot and by team are parts of it. */
  readonly #moments: Float64Array;
  readonly #counts: Int32Array;
  readonly #freshMoments: Float64Array;
  readonly #freshCounts: Int32Array;
  readonly #fixedMinutes: Float64Array;
  readonly #minutes: Float64Array;
  readonly #waits: Int32Array;
  readonly #wants: Int32Array;
  readonly #followers: Int32Array;
  readonly #stack: Int32Array;
  /** Open steps of each team, in no order, and where in its list each stands; -1 for not in it. */
  readonly #open: Int32Array;
  readonly #place: Int32Array;
  /** 1 for an open step that waits for a copy of what it uses; it stands in no list. */
  readonly #isWaiting: Int32Array;
  /** When the work on a step will end, and 1 while an adult gives a hint for it or checks it. */
  readonly #due: Float64Array;
  readonly #served: Int32Array;
  /** How much a team had idled when the work on a step, or the wait for it, began. */
  readonly #idleBefore: Float64Array;
  /** When the wait for a copy, or for a check, began. */
  readonly #waitsFrom: Float64Array;
  /** By team. */
  readonly #freePupils: Int32Array;
  readonly #openCount: Int32Array;
  readonly #openHands: Int32Array;
  readonly #waitingCount: Int32Array;
  readonly #choices: Int32Array;
  readonly #prizesLeft: Int32Array;
  readonly #hintsLeft: Int32Array;
  readonly #isOver: Int32Array;
  readonly #idle: Float64Array;
  readonly #toldOpen: Int32Array;
  readonly #toldBusy: Int32Array;
  readonly #toldFree: Int32Array;
  readonly #turns: Int32Array;
  readonly #words: Float64Array;
  #now = 0;
  #instant = 0;
  #playing = 0;

  constructor(clock: Clock, rules: Rules, stream: number, tally?: Tally) {
    const { network, lesson } = clock;
    const { size } = network;
    const { count } = network.events;
    const teams = rules.teams;
    this.#clock = clock;
    this.#plan = planOf(clock);
    this.#size = size;
    this.#count = count;
    this.teams = teams;
    this.#isStep = network.isStep;
    this.#hands = clock.hands;
    this.#newestFirst = rules.choosing === 'newestFirst';
    this.#isRanked = rules.choosing !== 'any' && rules.choosing !== 'newestFirst';
    this.#classes = classesOf(clock, rules.choosing);
    this.#draws = new Draws(clock, teams, stream);
    this.#calendar = new Calendar((3 * size + 1) * teams + 1);
    this.#tally = tally;

    const slots = teams * size;
    this.#moments = new Float64Array(5 * slots + 2 * teams);
    this.#counts = new Int32Array(2 * teams * count + 6 * slots + 11 * teams);
    const moments = parts(this.#moments);
    const counts = parts(this.#counts);
    this.possible = moments(slots);
    this.begin = moments(slots);
    this.free = moments(slots);
    this.reached = moments(slots);
    this.atHand = moments(slots);
    this.ends = moments(teams);
    this.#idle = moments(teams);
    this.pupils = counts(slots);
    this.#copies = rules.sharing ? new Copies(clock, teams, this.reached) : undefined;
    const isServed = lesson.adults > 0 && (rules.checking || rules.hints > 0);
    this.#adults = isServed ? new Adults(lesson.adults, 2 * slots) : undefined;
    this.#checked = isServed && rules.checking ? clock.checked : undefined;
    this.#hints = isServed ? rules.hints : 0;

    this.#fixedMinutes = clock.low;
    this.#minutes = new Float64Array(slots);
    for (let team = 0; team < teams; team++) this.#minutes.set(clock.low, team * size);
    this.#waits = counts(teams * count);
    this.#wants = counts(teams * count);
    this.#followers = counts(slots);
    this.#stack = new Int32Array(count);
    this.#open = counts(slots);
    this.#place = counts(slots);
    this.#isWaiting = counts(slots);
    this.#due = new Float64Array(slots);
    this.#served = counts(slots);
    this.#idleBefore = new Float64Array(slots);
    this.#waitsFrom = new Float64Array(slots);
    this.#freePupils = counts(teams);
    this.#openCount = counts(teams);
    this.#openHands = counts(teams);
    this.#waitingCount = counts(teams);
    this.#choices = counts(teams);
    this.#prizesLeft = counts(teams);
    this.#hintsLeft = counts(teams);
    this.#isOver = counts(teams);
    this.#toldOpen = counts(teams);
    this.#toldBusy = counts(teams);
    this.#toldFree = counts(teams);
    this.#turns = new Int32Array(teams);
    this.#words = new Float64Array(teams);

    this.#setOut();
    this.#freshMoments = this.#moments.slice();
    this.#freshCounts = this.#counts.slice();
  }

  /** Minutes that teams waited for each shared thing, and for an adult, over all runs so far. */
  get queued(): Float64Array {
    return this.#copies?.queued ?? new Float64Array(this.#size);
  }

  get queuedForAdult(): number {
    return this.#adults?.queued ?? 0;
  }

  /** Plays a run from beginning to end; `untimed` is a step that takes no time in it. */
  play(run: number, untimed = -1, cut?: Cut) {
    this.#reset();
    if (cut !== undefined) {
      for (let team = 0; team < this.teams; team++) {
        this.#calendar.add(cut.minute, HAPPENINGS * (team * this.#size + cut.step) + CUT);
      }
    }
    this.#draws.begin(run, this.#minutes);
    if (untimed >= 0) this.#setMinutes(untimed, 0);
    const { network } = this.#clock;
    const { release } = network.events;
    const { released } = this.#plan;
    const calendar = this.#calendar;
    let given = 0;
    for (;;) {
      for (
        ;
        given < released.length && (release[released[given] ?? 0] ?? 0) <= this.#now + INSTANT;
        given++
      ) {
        for (let team = 0; team < this.teams; team++) {
          if (this.#isOver[team] !== 1) this.#lessWait(team, released[given] ?? 0);
        }
      }
      this.#endTeams();
      if (this.#playing === 0) break;
      if (this.#copies === undefined) for (let team = 0; team < this.teams; team++) this.#choose(team);
      else this.#chooseInTurn(this.#copies);
      if (this.#tally !== undefined) this.#tell(this.#tally);

      let next = calendar.earliest;
      if (given < released.length) next = Math.min(next, release[released[given] ?? 0] ?? 0);
      if (next === NEVER) break;
      this.#elapse(next - this.#now);
      this.#now = next;
      do {
        while (calendar.earliest <= next + INSTANT) this.#happen(calendar.take());
        if (this.#adults !== undefined) this.#serve(this.#adults);
      } while (calendar.earliest <= next + INSTANT);
    }
    if (untimed >= 0) this.#setMinutes(untimed, this.#fixedMinutes[untimed] ?? 0);
  }

  /** A copy of how a team fared in the last run. */
  log(run: number, team: number): RunLog {
    const from = team * this.#size;
    const to = from + this.#size;
    return {
      run,
      end: this.ends[team] ?? NEVER,
      possible: this.possible.slice(from, to),
      begin: this.begin.slice(from, to),
      free: this.free.slice(from, to),
      pupils: this.pupils.slice(from, to),
      reached: this.reached.slice(from, to),
      away: this.#copies?.awayFrom(team, this.begin, (slot) => this.#heldUntil(slot)) ?? [],
    };
  }

  /** When the work on a step that was begun kept no copy any more: its end, or that of its team. */
  #heldUntil(slot: number): number {
    const free = this.free[slot] ?? NEVER;
    return free === NEVER ? (this.ends[Math.floor(slot / this.#size)] ?? NEVER) : free;
  }

  /** The state at minute 0 of every run, with all reached that comes by itself. */
  #setOut() {
    const { waits, wants, followers, ready } = this.#plan;
    this.#moments.fill(NEVER);
    this.#idle.fill(0);
    this.#place.fill(-1);
    this.#freePupils.fill(this.#clock.lesson.team);
    this.#prizesLeft.fill(this.#clock.network.prizes.length);
    this.#hintsLeft.fill(this.#hints);
    for (let team = 0; team < this.teams; team++) {
      this.#waits.set(waits, team * this.#count);
      this.#wants.set(wants, team * this.#count);
      this.#followers.set(followers, team * this.#size);
      for (let i = 0; i < ready.length; i++) this.#come(team, ready[i] ?? 0);
    }
  }

  #reset() {
    this.#moments.set(this.#freshMoments);
    this.#counts.set(this.#freshCounts);
    this.#calendar.clear();
    this.#copies?.clear();
    this.#adults?.clear();
    this.#now = 0;
    this.#instant = 0;
    this.#playing = this.teams;
  }

  #setMinutes(step: number, minutes: number) {
    for (let team = 0; team < this.teams; team++) this.#minutes[team * this.#size + step] = minutes;
  }

  #lessWait(team: number, event: number) {
    const slot = team * this.#count + event;
    const left = (this.#waits[slot] ?? 0) - 1;
    this.#waits[slot] = left;
    if (left === 0) this.#come(team, event);
  }

  /** An event has all that it waited for: a step becomes open, anything else is reached. */
  #come(team: number, event: number) {
    if (event < this.#size && this.#isStep[event] === 1) this.#becomeOpen(team, event);
    else this.#reach(team, event);
  }

  #becomeOpen(team: number, step: number) {
    const slot = team * this.#size + step;
    // Given away before it could be tried.
    if (this.reached[slot] !== NEVER) return;
    this.possible[slot] = this.#now;
    if (this.#followers[slot] === 0) return;
    const count = this.#openCount[team] ?? 0;
    this.#open[team * this.#size + count] = step;
    this.#place[slot] = count;
    this.#openCount[team] = count + 1;
    this.#openHands[team] = (this.#openHands[team] ?? 0) + (this.#hands[step] ?? 0);
  }

  #leaveOpen(team: number, step: number) {
    const from = team * this.#size;
    const place = this.#place[from + step] ?? 0;
    const count = (this.#openCount[team] ?? 0) - 1;
    const last = this.#open[from + count] ?? 0;
    this.#open[from + place] = last;
    this.#place[from + last] = place;
    this.#place[from + step] = -1;
    this.#openCount[team] = count;
    this.#openHands[team] = (this.#openHands[team] ?? 0) - (this.#hands[step] ?? 0);
  }

  /** An event comes, and with it all that takes no time and waited for it alone. */
  #reach(team: number, first: number) {
    const size = this.#size;
    const events = team * this.#count;
    const stack = this.#stack;
    const waits = this.#waits;
    const wants = this.#wants;
    const { next, choices } = this.#plan;
    let top = 1;
    stack[0] = first;
    while (top > 0) {
      const event = stack[--top] ?? 0;
      if (event < size) this.#reachNode(team, event);
      else this.#comeToHand(team, this.#clock.network.events.node[event] ?? 0);
      for (let i = next.starts[event] ?? 0, end = next.starts[event + 1] ?? 0; i < end; i++) {
        const waiting = next.items[i] ?? 0;
        const left = (waits[events + waiting] ?? 0) - 1;
        waits[events + waiting] = left;
        if (left !== 0) continue;
        if (waiting < size && this.#isStep[waiting] === 1) this.#becomeOpen(team, waiting);
        else stack[top++] = waiting;
      }
      for (let i = choices.starts[event] ?? 0, end = choices.starts[event + 1] ?? 0; i < end; i++) {
        const choosing = choices.items[i] ?? 0;
        const wanted = (wants[events + choosing] ?? 0) - 1;
        wants[events + choosing] = wanted;
        if (wanted !== 0) continue;
        const left = (waits[events + choosing] ?? 0) - 1;
        waits[events + choosing] = left;
        if (left !== 0) continue;
        if (choosing < size && this.#isStep[choosing] === 1) this.#becomeOpen(team, choosing);
        else stack[top++] = choosing;
      }
    }
  }

  /** A container that takes time itself is possible only when its locks are open. */
  #comeToHand(team: number, container: number) {
    this.atHand[team * this.#size + container] = this.#now;
    if (this.#isStep[container] !== 1) this.possible[team * this.#size + container] = this.#now;
  }

  #reachNode(team: number, node: number) {
    const nodes = team * this.#size;
    this.reached[nodes + node] = this.#now;
    if (this.possible[nodes + node] === NEVER) this.possible[nodes + node] = this.#now;
    if (this.#plan.isPrize[node] === 1) this.#prizesLeft[team] = (this.#prizesLeft[team] ?? 0) - 1;
    const { follows } = this.#plan;
    for (let i = follows.starts[node] ?? 0, end = follows.starts[node + 1] ?? 0; i < end; i++) {
      const step = follows.items[i] ?? 0;
      const left = (this.#followers[nodes + step] ?? 0) - 1;
      this.#followers[nodes + step] = left;
      if (left === 0) this.#passOver(team, step);
    }
  }

  /** An open step is of no more use. One that is being worked stands in no list and goes on. */
  #passOver(team: number, step: number) {
    const slot = team * this.#size + step;
    if ((this.#place[slot] ?? -1) >= 0) this.#leaveOpen(team, step);
    else if (this.#isWaiting[slot] === 1) this.#stopWaiting(team, slot);
  }

  #stopWaiting(team: number, slot: number) {
    if (this.#tally !== undefined) this.#tallyWait(team, slot, this.#tally, this.#tally.queueing);
    this.#isWaiting[slot] = 0;
    this.#waitingCount[team] = (this.#waitingCount[team] ?? 0) - 1;
  }

  #endTeams() {
    for (let team = 0; team < this.teams; team++) {
      if (this.#prizesLeft[team] !== 0 || this.#isOver[team] === 1) continue;
      this.#isOver[team] = 1;
      this.ends[team] = this.#now;
      this.#playing--;
      if (this.#tally !== undefined) this.#close(team, this.#tally);
      if (this.#copies !== undefined || this.#adults !== undefined) this.#letGo(team);
    }
  }

  /** What a team leaves undone at its end keeps no shared thing and no adult from the others. */
  #letGo(team: number) {
    for (let step = 0; step < this.#size; step++) {
      const slot = team * this.#size + step;
      if (this.begin[slot] !== NEVER && this.free[slot] === NEVER) this.#copies?.giveBack(team, step);
      this.#isWaiting[slot] = 0;
      if (this.#served[slot] === 1 && this.#adults !== undefined) this.#adults.free++;
      this.#served[slot] = 0;
    }
    this.#waitingCount[team] = 0;
  }

  /** A team's round of choosing where nothing is shared. */
  #choose(team: number) {
    if (this.#isOver[team] === 1) return;
    const from = team * this.#size;
    for (;;) {
      const free = this.#freePupils[team] ?? 0;
      const count = this.#openCount[team] ?? 0;
      if (free === 0 || count === 0) return;
      if ((this.#openHands[team] ?? 0) <= free) {
        // Enough pupils for all of them: whatever the order, it comes to the same.
        this.#choices[team] = (this.#choices[team] ?? 0) + count;
        while ((this.#openCount[team] ?? 0) > 0) {
          this.#take(team, this.#open[from + (this.#openCount[team] ?? 0) - 1] ?? 0);
        }
        return;
      }
      this.#take(team, this.#pick(team));
    }
  }

  /** The open step that a team takes next. */
  #pick(team: number): number {
    const from = team * this.#size;
    const count = this.#openCount[team] ?? 0;
    const number = this.#choices[team] ?? 0;
    this.#choices[team] = number + 1;
    const open = this.#open;
    let best = open[from] ?? 0;
    if (count === 1) return best;
    const classes = this.#classes;
    let firstClass = 0;
    let newest = 0;
    if (this.#isRanked) {
      firstClass = NEVER;
      for (let i = 0; i < count; i++) firstClass = Math.min(firstClass, classes[open[from + i] ?? 0] ?? 0);
    } else if (this.#newestFirst) {
      for (let i = 0; i < count; i++) {
        newest = Math.max(newest, this.possible[from + (open[from + i] ?? 0)] ?? 0);
      }
    }
    let least = NEVER;
    for (let i = 0; i < count; i++) {
      const step = open[from + i] ?? 0;
      if ((classes[step] ?? 0) > firstClass) continue;
      if (this.#newestFirst && (this.possible[from + step] ?? 0) < newest - INSTANT) continue;
      const word = this.#draws.choice(team, number, step);
      if (word > least || (word === least && step > best)) continue;
      least = word;
      best = step;
    }
    return best;
  }

  /** Rounds of choosing where things are shared: first those who wait already, then teams in an order that is drawn anew at each instant. */
  #chooseInTurn(copies: Copies) {
    const size = this.#size;
    let kept = 0;
    for (let at = 0; at < copies.length; at++) {
      const slot = copies.waiting[at] ?? 0;
      if (this.#isWaiting[slot] !== 1) continue;
      const team = Math.floor(slot / size);
      const step = slot - team * size;
      if ((this.#freePupils[team] ?? 0) > 0 && copies.canTake(team, step)) {
        this.#stopWaiting(team, slot);
        this.#start(team, step);
      } else copies.waiting[kept++] = slot;
    }
    copies.length = kept;

    let count = 0;
    this.#instant++;
    for (let team = 0; team < this.teams; team++) {
      if (this.#isOver[team] === 1 || this.#openCount[team] === 0 || this.#freePupils[team] === 0) continue;
      const word = this.#draws.turn(team, this.#instant, -1);
      let at = count++;
      for (; at > 0 && (this.#words[at - 1] ?? 0) > word; at--) {
        this.#words[at] = this.#words[at - 1] ?? 0;
        this.#turns[at] = this.#turns[at - 1] ?? 0;
      }
      this.#words[at] = word;
      this.#turns[at] = team;
    }
    for (let i = 0; i < count; i++) {
      const team = this.#turns[i] ?? 0;
      while ((this.#freePupils[team] ?? 0) > 0 && (this.#openCount[team] ?? 0) > 0) {
        const step = this.#pick(team);
        if (copies.canTake(team, step)) this.#take(team, step);
        else {
          const slot = team * size + step;
          this.#leaveOpen(team, step);
          this.#isWaiting[slot] = 1;
          this.#waitsNow(team, slot);
          this.#waitingCount[team] = (this.#waitingCount[team] ?? 0) + 1;
          copies.waiting[copies.length++] = slot;
        }
      }
    }
  }

  #take(team: number, step: number) {
    this.#leaveOpen(team, step);
    this.#start(team, step);
  }

  #start(team: number, step: number) {
    const slot = team * this.#size + step;
    const free = this.#freePupils[team] ?? 0;
    const pupils = Math.min(free, this.#hands[step] ?? 0);
    const minutes = this.#minutes[slot] ?? 0;
    this.#freePupils[team] = free - pupils;
    this.pupils[slot] = pupils;
    this.begin[slot] = this.#now;
    this.#idleBefore[slot] = this.#idle[team] ?? 0;
    this.#calendar.add(this.#now + minutes, HAPPENINGS * slot + WORKED);
    this.#copies?.take(team, step);
    if (this.#hints === 0) return;
    this.#due[slot] = this.#now + minutes;
    const hintAfter = this.#clock.hintAfter[step] ?? 0;
    if (minutes > hintAfter) this.#calendar.add(this.#now + hintAfter, HAPPENINGS * slot + ASKED);
  }

  #happen(item: number) {
    const slot = item >> 2;
    const team = this.teams === 1 ? 0 : Math.floor(slot / this.#size);
    if (this.#isOver[team] === 1) return;
    const step = slot - team * this.#size;
    const what = item & 3;
    if (what === WORKED) this.#finish(team, step, slot);
    else if (what === CUT) this.#giveAway(team, step, slot);
    else if (this.#adults === undefined) return;
    else if (what === CHECKED) {
      this.#served[slot] = 0;
      this.#adults.free++;
      if (this.reached[slot] !== NEVER) return;
      if (this.#tally !== undefined) this.#tallyWait(team, slot, this.#tally, this.#tally.checking);
      this.#reach(team, step);
    } else if (this.free[slot] === NEVER && (this.#hintsLeft[team] ?? 0) > 0) {
      this.#adults.add(2 * slot + 1, this.#now, this.#draws.turn(team, 0, step));
    }
  }

  /** The work on a step is done. A step that a hint has ended comes up once more at the time when it would have ended without. */
  #finish(team: number, step: number, slot: number) {
    if (this.free[slot] !== NEVER) return;
    this.free[slot] = this.#now;
    this.#freePupils[team] = (this.#freePupils[team] ?? 0) + (this.pupils[slot] ?? 0);
    if (this.#tally !== undefined) this.#tallyStep(team, step, this.#tally);
    this.#copies?.giveBack(team, step);
    if (this.#adults !== undefined) {
      if (this.#served[slot] === 1) {
        this.#served[slot] = 0;
        this.#adults.free++;
      }
      if (this.#checked?.[step] === 1) {
        this.#adults.add(2 * slot, this.#now, this.#draws.turn(team, 0, step));
        this.#waitsNow(team, slot);
        return;
      }
    }
    this.#reach(team, step);
  }

  /** A step is done without more work: whoever works on it is free, and nobody checks it. */
  #giveAway(team: number, step: number, slot: number) {
    if (this.reached[slot] !== NEVER) return;
    if (this.begin[slot] === NEVER) this.#passOver(team, step);
    else if (this.free[slot] === NEVER) {
      this.free[slot] = this.#now;
      this.#freePupils[team] = (this.#freePupils[team] ?? 0) + (this.pupils[slot] ?? 0);
      if (this.#tally !== undefined) this.#tallyStep(team, step, this.#tally);
      this.#copies?.giveBack(team, step);
      if (this.#served[slot] === 1 && this.#adults !== undefined) {
        this.#served[slot] = 0;
        this.#adults.free++;
      }
    } else if (this.#tally !== undefined) this.#tallyWait(team, slot, this.#tally, this.#tally.checking);
    this.#reach(team, step);
  }

  /** Free adults take what waits for them. One who gives a hint stays until the step is done. */
  #serve(adults: Adults) {
    const { hintMinutes, checkMinutes } = this.#clock.lesson;
    while (adults.free > 0 && adults.length > 0) {
      const item = adults.take();
      const slot = item >> 1;
      if (!this.#isWanted(item)) continue;
      adults.free--;
      this.#served[slot] = 1;
      if ((item & 1) === 0) {
        this.#calendar.add(this.#now + checkMinutes, HAPPENINGS * slot + CHECKED);
        continue;
      }
      const team = Math.floor(slot / this.#size);
      this.#hintsLeft[team] = (this.#hintsLeft[team] ?? 0) - 1;
      if (this.#now + hintMinutes < (this.#due[slot] ?? 0)) {
        this.#calendar.add(this.#now + hintMinutes, HAPPENINGS * slot + WORKED);
      }
    }
  }

  /** Somebody still waits for what stands in the queue of the adults. */
  #isWanted(item: number): boolean {
    const slot = item >> 1;
    const team = Math.floor(slot / this.#size);
    if (this.#isOver[team] === 1) return false;
    if ((item & 1) === 0) return this.reached[slot] === NEVER;
    return this.free[slot] === NEVER && (this.#hintsLeft[team] ?? 0) > 0;
  }

  #elapse(minutes: number) {
    for (let team = 0; team < this.teams; team++) {
      if (this.#isOver[team] === 1) continue;
      this.#idle[team] = (this.#idle[team] ?? 0) + (this.#freePupils[team] ?? 0) * minutes;
    }
    this.#copies?.elapse(minutes, this.#isWaiting);
    const adults = this.#adults;
    if (adults === undefined) return;
    for (let i = 0; i < adults.length; i++) {
      if (this.#isWanted(adults.waiting[i] ?? 0)) adults.queued += minutes;
    }
  }

  #tell(tally: Tally) {
    for (let team = 0; team < this.teams; team++) {
      if (this.#isOver[team] === 1) continue;
      const open = (this.#openCount[team] ?? 0) + (this.#waitingCount[team] ?? 0);
      const free = this.#freePupils[team] ?? 0;
      const busy = this.#clock.lesson.team - free;
      const moreOpen = open - (this.#toldOpen[team] ?? 0);
      const moreBusy = busy - (this.#toldBusy[team] ?? 0);
      const moreFree = free - (this.#toldFree[team] ?? 0);
      if (moreOpen === 0 && moreBusy === 0 && moreFree === 0) continue;
      tally.change(this.#now, moreOpen, moreBusy, moreFree);
      this.#toldOpen[team] = open;
      this.#toldBusy[team] = busy;
      this.#toldFree[team] = free;
    }
  }

  #tallyStep(team: number, step: number, tally: Tally) {
    const waited = (this.#idle[team] ?? 0) - (this.#idleBefore[team * this.#size + step] ?? 0);
    tally.idleWhile[step] = (tally.idleWhile[step] ?? 0) + waited;
  }

  /** From now on a team waits with this step: for a copy of what it uses, or for its check. */
  #waitsNow(team: number, slot: number) {
    this.#waitsFrom[slot] = this.#now;
    this.#idleBefore[slot] = this.#idle[team] ?? 0;
  }

  #tallyWait(team: number, slot: number, tally: Tally, waits: Waited) {
    const step = slot - team * this.#size;
    const waited = (this.#idle[team] ?? 0) - (this.#idleBefore[slot] ?? 0);
    tally.idleWhile[step] = (tally.idleWhile[step] ?? 0) + waited;
    waits.idle[step] = (waits.idle[step] ?? 0) + waited;
    waits.minutes[step] = (waits.minutes[step] ?? 0) + this.#now - (this.#waitsFrom[slot] ?? 0);
  }

  /** At its end a team has nothing open and nobody waits. */
  #close(team: number, tally: Tally) {
    for (let step = 0; step < this.#size; step++) {
      const slot = team * this.#size + step;
      if (this.#isWaiting[slot] === 1) this.#tallyWait(team, slot, tally, tally.queueing);
      if (this.begin[slot] === NEVER) continue;
      if (this.free[slot] === NEVER) this.#tallyStep(team, step, tally);
      else if (this.reached[slot] === NEVER) this.#tallyWait(team, slot, tally, tally.checking);
    }
    tally.idle += this.#idle[team] ?? 0;
    tally.change(
      this.#now,
      -(this.#toldOpen[team] ?? 0),
      -(this.#toldBusy[team] ?? 0),
      -(this.#toldFree[team] ?? 0),
    );
  }
}

/** Hands out the parts of an array, one after the other. */
function parts<Numbers extends { subarray(begin: number, end: number): Numbers }>(whole: Numbers) {
  let end = 0;
  return (length: number): Numbers => {
    const begin = end;
    end += length;
    return whole.subarray(begin, end);
  };
}
