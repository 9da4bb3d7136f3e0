/**
 * What a simulation has to say: plain data, able to travel. Minutes of play; arrays have one entry for each node of the network.
 * Where several teams are played, figures are of one team: the mean over them, shares over all.
 */

/** Other teams have every copy of a shared thing, from one minute until another. */
export interface Away {
  /** Node index. */
  readonly thing: number;
  readonly from: number;
  readonly to: number;
}

/** One run of one team, as it went: all that the play-through shows at any minute follows from it. Infinity stands for 'not in this run'. */
export interface RunLog {
  readonly run: number;
  /** When every prize was reached. */
  readonly end: number;
  /** From when a step could be taken up, and anything else was at hand (a container: there, and perhaps locked). */
  readonly possible: Float64Array;
  /** When a step was begun. */
  readonly begin: Float64Array;
  /** When it kept nobody busy any more; later than that it may still wait to be checked. */
  readonly free: Float64Array;
  /** Pupils that it kept busy from `begin` to `free`. */
  readonly pupils: Int32Array;
  /** When it was reached: a step done, a container or lock open, a thing had. */
  readonly reached: Float64Array;
  /** Empty where nothing is shared. */
  readonly away: readonly Away[];
}

/** At a share of the runs, by nearest rank; Infinity where fewer runs come so far. */
export interface Spread {
  readonly p10: Float64Array;
  readonly median: Float64Array;
  readonly p90: Float64Array;
}

/** Means over the runs, at `minutes[i]`; after a run's end nothing is open and nobody waits. */
export interface Profile {
  readonly minutes: Float64Array;
  readonly open: Float64Array;
  readonly busy: Float64Array;
  readonly idle: Float64Array;
}

/** How teams waited with a step, for what is not in their own hands; by step, of one team, mean over the runs. */
export interface Waited {
  /** Pupil-minutes that the team idled meanwhile. */
  readonly idle: Float64Array;
  /** Minutes that the wait took. */
  readonly minutes: Float64Array;
}

export interface Simulated {
  readonly runs: number;
  /** Pupils of one team. */
  readonly team: number;
  /** One for each run and team, sorted. */
  readonly ends: Float64Array;
  /** The upper one where two are in the middle. */
  readonly median: number;
  readonly p10: number;
  readonly p90: number;
  /** Share of `ends` within the lesson's minutes of play, 0 to 1. */
  readonly inTime: number;
  readonly reached: Spread;
  /** Pupil-minutes spent waiting up to the end, mean over the runs. */
  readonly idle: number;
  /**
   * How much of that fell while this step was being worked. Where things are shared, or steps checked (Rules.sharing, Rules.checking), also
   * while the team queued for a copy of what this step uses, and while the step waited to be checked until it was; the plain model knows neither.
   * Several steps may be worked and waited for at once: the figures of all steps add up to more than `idle`, or to less.
   */
  readonly idleWhile: Float64Array;
  /** The part of `idleWhile` in queues for shared things. */
  readonly queueing: Waited;
  /** The part of `idleWhile` from the end of the work to the end of the check. */
  readonly checking: Waited;
  readonly profile: Profile;
  /** The run whose end is nearest the median; the earliest of several. */
  readonly typical: RunLog;
  /** Minutes that teams stood before a shared thing, each with all its copies taken, summed over all teams; mean over the runs. */
  readonly queued: Float64Array;
  /** The same for the adults. */
  readonly queuedForAdult: number;
}
