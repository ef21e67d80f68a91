import type { Instant, Random } from '#libs/kernel';
import type { Disturbance } from '../behaviours/index.js';
import type { Profile } from '../profiles/index.js';
import { countsAt, endOf, remainder, saidNow, totalsWith } from './progress.js';
import { nextEntry, runningEntry } from './queue.js';
import { between, planRun } from './run-plan.js';
import type { DeviceState, Entry, Notice, Phase, Run, Segment } from './state.js';
import type { Voice } from './voice.js';

interface Due {
  readonly at: Instant;
  readonly act: (at: Instant) => void;
}

/** Loaded, but nobody has pressed the button. */
const WAITS_FOR_CREW: Segment = {
  status: 'Stopped',
  statusDetails: 'Pause',
  durationS: null,
  good: 0,
  waste: 0,
  notice: null,
};

const TAKEN_OFF: Segment = { ...WAITS_FOR_CREW, status: 'Suspended', statusDetails: null };

/**
 * The machine with its crew: what happens by itself as plant time passes, and what commands change. It keeps all it knows
 * in the state it was given and does nothing until told how late it is; so it can be stopped and continued anywhere.
 */
export class Machine {
  constructor(
    private readonly state: DeviceState,
    private readonly profile: Profile,
    private readonly disturbance: Disturbance,
    private readonly random: Random,
    private readonly heartbeatS: number,
    private readonly voice: Voice,
  ) {}

  /** Switched on: catches up with what happened meanwhile, says how it is and looks whether there is work. */
  begin(at: Instant): void {
    const { heartbeatAt } = this.state;
    // Nobody wants the heartbeats of a time when nobody listened.
    if (heartbeatAt !== null && heartbeatAt < at) this.state.heartbeatAt = null;
    this.advance(at);
    if (runningEntry(this.state) === null) this.#becomeIdle(at);
    this.callCrew(at);
  }

  /** The instant of the next thing that happens by itself. */
  nextDue(): Instant | null {
    return this.#nextEvent()?.at ?? null;
  }

  /** Lets everything happen that is due up to an instant, each thing at its own instant. */
  advance(to: Instant): void {
    for (let due = this.#nextEvent(); due !== null && due.at <= to; due = this.#nextEvent()) due.act(due.at);
  }

  /** The plant clock was set anew: what was still to come stays as far ahead as it was. */
  shift(deltaMs: number): void {
    const { state } = this;
    const moved = (at: Instant | null): Instant | null => (at === null ? null : at + deltaMs);
    state.crewAt = moved(state.crewAt);
    state.heartbeatAt = moved(state.heartbeatAt);
    for (const { run } of state.entries) {
      if (run === null) continue;
      run.reportAt = moved(run.reportAt);
      if (run.current !== null) run.current.anchor += deltaMs;
    }
  }

  #nextEvent(): Due | null {
    const running = runningEntry(this.state);
    const run = running?.run ?? null;
    const events: (Due | null)[] = [
      due(endOf(run?.current ?? null), (at) => this.#endSegment(running!, run!, at)),
      due(this.state.crewAt, (at) => this.#pressButton(at)),
      due(run?.reportAt ?? null, (at) => this.#report(running!, run!, at)),
      due(this.state.heartbeatAt, (at) => this.#heartbeat(at)),
    ];
    let first: Due | null = null;
    for (const event of events) if (event !== null && (first === null || event.at < first.at)) first = event;
    return first;
  }

  /** Somebody comes when the machine is free and there is work, or when loaded work waits for the button. */
  callCrew(at: Instant): void {
    const running = runningEntry(this.state);
    const waits = running === null ? !this.state.held && nextEntry(this.state) !== null : isPaused(running);
    if (!waits) {
      this.state.crewAt = null;
      return;
    }
    if (this.state.crewAt !== null) return;
    const [least, most] = this.profile.reactionS;
    const reactionS = between(this.random, least, most) * (this.disturbance.slowness ?? 1);
    this.state.crewAt = at + Math.round(reactionS * 1000);
  }

  #pressButton(at: Instant): void {
    this.state.crewAt = null;
    const entry = runningEntry(this.state) ?? nextEntry(this.state);
    if (entry === null) return;
    this.state.heartbeatAt = null;
    this.state.idleSince = null;
    entry.status = 'Running';
    entry.start ??= at;
    if (entry.run === null) {
      const number = ++this.state.runs;
      const rest = planRun(entry.work, this.profile, this.disturbance, number, this.random);
      entry.run = { start: at, phases: [], current: null, rest, reportAt: null, notices: [], usedSaid: null };
    } else {
      this.#closePhase(entry, entry.run, at);
    }
    this.#nextSegment(entry, entry.run, at);
  }

  #nextSegment(entry: Entry, run: Run, at: Instant): void {
    const segment = run.rest.shift();
    if (segment === undefined) this.#end(entry, run, 'Completed', at);
    else this.#enter(entry, run, segment, at);
  }

  #enter(entry: Entry, run: Run, segment: Segment, at: Instant): void {
    const last = run.phases.at(-1);
    // Phases of one run follow each other without gap and never backwards, whatever was done to the clock.
    const start = Math.max(at, last?.end ?? at);
    run.current = { segment, start, anchor: at };
    const moves = segment.durationS !== null;
    run.reportAt = moves ? at + this.profile.reportEveryS * 1000 : null;
    if (segment.notice !== null) this.#notify(entry, run, segment.notice, at);
    this.voice.phase(entry, saidNow(run, at)!, start, 'begins');
  }

  #endSegment(entry: Entry, run: Run, at: Instant): void {
    this.#closePhase(entry, run, at);
    this.#nextSegment(entry, run, at);
  }

  #closePhase(entry: Entry, run: Run, at: Instant): void {
    const { current } = run;
    if (current === null) return;
    const { status, statusDetails } = current.segment;
    // The start is the name of a phase, so the next one must not have the same.
    const end = Math.max(at, current.start + 1);
    const phase: Phase = { start: current.start, end, status, statusDetails, ...countsAt(current, at) };
    run.phases.push(phase);
    run.current = null;
    run.reportAt = null;
    this.state.counter += phase.good + phase.waste;
    this.voice.phase(entry, phase, end, 'ends');
    this.voice.used(entry, null, end);
  }

  #report(entry: Entry, run: Run, at: Instant): void {
    run.reportAt = at + this.profile.reportEveryS * 1000;
    const phase = saidNow(run, at)!;
    const time = Math.max(at, phase.start);
    this.voice.phase(entry, phase, time, 'goes on');
    this.voice.used(entry, phase, time);
  }

  #heartbeat(at: Instant): void {
    this.state.heartbeatAt = at + this.heartbeatS * 1000;
    this.voice.idle(at, 'goes on');
  }

  #notify(entry: Entry, run: Run, notice: Notice, at: Instant): void {
    run.notices.push({ ...notice, time: at });
    this.voice.notice(entry, notice, at);
  }

  #end(entry: Entry, run: Run, status: 'Completed' | 'Aborted', at: Instant): void {
    const last = run.phases.at(-1) ?? null;
    const end = Math.max(at, last?.end ?? at);
    const { good } = totalsWith(run, null);
    const planned = Math.floor(entry.work.outAmount ?? 0);
    if (status === 'Completed' && good < planned) {
      const text = `The material is used up: ${good} of ${planned} are good, ${planned - good} are missing.`;
      this.#notify(entry, run, { class: 'Warning', text }, end);
    }
    this.#settle(entry, status, end);
    this.voice.ended(entry, status, last, end);
    this.voice.returns(entry, end);
    this.#becomeIdle(end);
    this.callCrew(at);
  }

  /** The ticket goes back; until that has arrived the entry is neither running nor over. */
  #settle(entry: Entry, endStatus: 'Completed' | 'Aborted', at: Instant): void {
    entry.status = 'PendingReturn';
    entry.endStatus = endStatus;
    entry.end = at;
  }

  #becomeIdle(at: Instant): void {
    this.state.idleSince = at;
    this.state.heartbeatAt = at + this.heartbeatS * 1000;
    this.voice.idle(at, 'begins');
  }

  /** Stops an entry for good, wherever it is. An aborted entry has its status at once; its ticket still goes back. */
  abort(entry: Entry, endStatus: 'Completed' | 'Aborted', at: Instant): void {
    const { run, status } = entry;
    const wasRunning = status === 'Running';
    if (run !== null) {
      this.#closePhase(entry, run, at);
      run.rest = [];
    }
    const last = run?.phases.at(-1) ?? null;
    this.#settle(entry, endStatus, Math.max(at, last?.end ?? at));
    entry.status = endStatus;
    this.voice.ended(entry, endStatus, last, entry.end ?? at);
    this.voice.returns(entry, entry.end ?? at);
    if (wasRunning) {
      this.state.crewAt = null;
      this.#becomeIdle(at);
    }
    this.callCrew(at);
  }

  /** Takes the running entry off the machine; what is left of it waits. */
  suspend(entry: Entry, at: Instant): void {
    const run = entry.run!;
    if (run.current !== null && run.current.segment.durationS !== null) {
      run.rest.unshift(remainder(run.current, at));
    }
    this.#closePhase(entry, run, at);
    entry.status = 'Suspended';
    this.#enter(entry, run, TAKEN_OFF, at);
    this.state.crewAt = null;
    this.#becomeIdle(at);
    this.callCrew(at);
  }

  /**
   * Puts a suspended entry back. On a free machine it is loaded and, where somebody has to press a button, waits for that
   * (no message sets a machine in motion); on a busy one it waits its turn.
   */
  resume(entry: Entry, at: Instant): void {
    if (runningEntry(this.state) !== null) {
      entry.status = 'Waiting';
      entry.submitted = at;
      entry.order = this.state.orders++;
      return;
    }
    this.#closePhase(entry, entry.run!, at);
    entry.status = 'Running';
    this.state.heartbeatAt = null;
    this.state.idleSince = null;
    this.state.crewAt = null;
    if (this.profile.needsOperatorStart) this.#enter(entry, entry.run!, WAITS_FOR_CREW, at);
    else this.#nextSegment(entry, entry.run!, at);
    this.callCrew(at);
  }
}

function due(at: Instant | null, act: (at: Instant) => void): Due | null {
  return at === null ? null : { at, act };
}

function isPaused({ run }: Entry): boolean {
  return run?.current?.segment.durationS === null;
}
