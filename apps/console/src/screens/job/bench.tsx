import { useState } from 'preact/hooks';
import type { Step, Ticket } from '../../server/shapes.js';
import { words } from '../../words/index.js';
import { sendVerb } from './verbs.js';

/** Work at a bench is told by the person who does it: begun, paused and finished with what was counted since. */
export function Bench({ ticket, step }: { ticket: Ticket; step: Step }) {
  const t = words.job;
  const [good, setGood] = useState('');
  const [waste, setWaste] = useState('');
  const [fault, setFault] = useState('');
  const running = step.status === 'InProgress';
  const begun = running || step.status === 'Stopped';
  const send = async (verb: string): Promise<void> => {
    const counts = verb === 'start' ? {} : { good: Number(good || 0), waste: Number(waste || 0) };
    const why = await sendVerb(ticket.id, step.id, verb, counts);
    setFault(why ?? '');
    if (why === null) {
      setGood('');
      setWaste('');
    }
  };
  const verbs = running
    ? (['pause', 'finish'] as const)
    : begun
      ? (['start', 'finish'] as const)
      : (['start'] as const);
  const field = (id: string, label: string, value: string, set: (text: string) => void) => (
    <div class="field field-short">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="number"
        min="0"
        step="1"
        inputMode="numeric"
        value={value}
        onInput={(event) => set(event.currentTarget.value)}
      />
    </div>
  );
  return (
    <fieldset class="bench">
      <legend>{t.bench}</legend>
      {begun && field(`good-${step.id}`, t.goodSince, good, setGood)}
      {begun && field(`waste-${step.id}`, t.wasteSince, waste, setWaste)}
      <div class="verbs">
        {verbs.map((verb) => (
          <button
            key={verb}
            type="button"
            class={verb === 'finish' || verbs.length === 1 ? 'act act-first' : 'act'}
            aria-label={t.verbOf(t.verbs[verb], t.stepNamed(step.id))}
            onClick={() => void send(verb)}
          >
            {t.verbs[verb]}
          </button>
        ))}
      </div>
      <p class="fault" role="alert">
        {fault}
      </p>
    </fieldset>
  );
}
