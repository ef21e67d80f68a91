import { useEffect } from 'preact/hooks';
import { words } from '../../words/index.js';
import type { Screen } from '../screen.js';
import { FileDrop } from './file-drop.js';
import { OrderForm } from './order-form.js';
import { Outcome } from './outcome.js';
import { outcome } from './sending.js';

function NewJob() {
  useEffect(() => {
    outcome.value = null;
    document.title = `${words.order.title} · ${words.product}`;
  }, []);
  return (
    <div class="new-job">
      <h1 tabIndex={-1}>{words.order.title}</h1>
      <p class="lead">{words.order.intro}</p>
      <Outcome />
      <OrderForm />
      <FileDrop />
    </div>
  );
}

export const newJob: Screen = {
  name: 'new-job',
  match: (path) => (path === '/new' ? {} : null),
  Show: NewJob,
  nav: { address: '#/new', word: words.nav.newJob },
};
