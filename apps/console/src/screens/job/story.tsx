import { useEffect, useRef, useState } from 'preact/hooks';
import { ask } from '../../server/ask.js';
import type { Listing, Sentence } from '../../server/shapes.js';
import { words } from '../../words/index.js';
import { inOrderOfTime, storyDays } from './story-days.js';

/** The job told as sentences, oldest first. New sentences are asked for behind the last one known. */
export function Story({ ticketId, revision }: { ticketId: string; revision: number }) {
  const t = words.job;
  const [told, setTold] = useState<readonly Sentence[]>([]);
  const [all, setAll] = useState(false);
  const reading = useRef<{ ticketId: string; last: string; busy: boolean; again: boolean } | null>(null);
  useEffect(() => {
    if (reading.current?.ticketId !== ticketId) {
      reading.current = { ticketId, last: '0', busy: false, again: false };
      setTold([]);
    }
    const mine = reading.current!;
    const read = async (): Promise<void> => {
      if (mine.busy) {
        mine.again = true;
        return;
      }
      mine.busy = true;
      for (let more = true; more; ) {
        mine.again = false;
        const path = `/api/v1/tickets/${encodeURIComponent(ticketId)}/story?cursor=${mine.last}`;
        const answer = await ask<Listing<Sentence>>(path);
        if (!answer.ok || reading.current !== mine) break;
        const { items, next } = answer.value;
        if (items.length > 0) {
          mine.last = String(Math.max(...items.map(({ id }) => Number(id))));
          setTold((before) => inOrderOfTime([...before, ...items]));
        }
        more = next !== null || mine.again;
      }
      mine.busy = false;
    };
    void read();
  }, [ticketId, revision]);
  return (
    <section aria-labelledby="story-title">
      <h2 id="story-title">{t.story}</h2>
      <label class="tick">
        <input type="checkbox" checked={all} onChange={(event) => setAll(event.currentTarget.checked)} />
        {t.storyAll}
      </label>
      {storyDays(told, all).map(({ day, sentences }) => (
        <div key={day}>
          <h3>{day}</h3>
          <ol class="story">
            {sentences.map(({ id, time, sentence, clock }) => (
              <li key={id}>
                <time dateTime={time}>{clock}</time>
                <span>{sentence}</span>
              </li>
            ))}
          </ol>
        </div>
      ))}
    </section>
  );
}
