import { useEffect } from 'preact/hooks';
import { plant } from '../../live/index.js';
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
  const hall = <Hall devices={devices.value} tickets={tickets.value} loaded={loaded.value} />;
  const jobs = <Jobs tickets={all} devices={devices.value} loaded={loaded.value} />;
  return (
    <>
      <h1 class="unseen" tabIndex={-1}>
        {words.board.title}
      </h1>
      {/* What is late and where a job waits is asked first; what each machine does comes after. */}
      {jobs}
      {hall}
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
