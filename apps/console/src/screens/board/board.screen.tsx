import { useEffect } from 'preact/hooks';
import { plant } from '../../live/index.js';
import { narrow } from '../../look/width.js';
import { words } from '../../words/index.js';
import type { Screen } from '../screen.js';
import { Hall } from './hall.js';
import { Jobs } from './jobs.js';
import { Rejected } from './rejected.js';

function Board() {
  useEffect(() => {
    document.title = `${words.board.title} · ${words.product}`;
  }, []);
  const { tickets, devices, loaded } = plant();
  const all = [...tickets.value.values()];
  const hall = <Hall key="hall" devices={devices.value} tickets={tickets.value} loaded={loaded.value} />;
  const jobs = <Jobs key="jobs" tickets={all} devices={devices.value} loaded={loaded.value} />;
  return (
    <>
      <h1 class="unseen" tabIndex={-1}>
        {words.board.title}
      </h1>
      {/* On a wall the hall is one band above the jobs; on a phone it would push them out of sight. */}
      {narrow.value ? [jobs, hall] : [hall, jobs]}
      <Rejected tickets={all.filter((ticket) => ticket.status === 'Rejected')} />
    </>
  );
}

export const board: Screen = {
  name: 'board',
  match: (path) => (path === '/' ? {} : null),
  Show: Board,
  nav: { address: '#/', word: words.nav.board },
};
