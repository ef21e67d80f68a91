import { signal } from '@preact/signals';
import { openPlant } from '../live/index.js';
import { ask, signInWanted } from '../server/ask.js';
import { words } from '../words/index.js';

const SIGNED_IN = 'sidelay.signedIn';
const LEAST = 10;

/** The cookie itself cannot be seen by scripts; this only decides whether a sign-out is offered. */
export const signedIn = signal(localStorage.getItem(SIGNED_IN) === '1');

function note(is: boolean): void {
  signedIn.value = is;
  if (is) localStorage.setItem(SIGNED_IN, '1');
  else localStorage.removeItem(SIGNED_IN);
}

export async function signOut(): Promise<void> {
  await ask('/api/v1/session', { method: 'DELETE' });
  note(false);
  openPlant();
}

const token = signal('');
const fault = signal('');
const sending = signal(false);

async function enter(event: Event): Promise<void> {
  event.preventDefault();
  const secret = token.value.trim();
  if (secret.length < LEAST) {
    fault.value = words.gate.short;
    return;
  }
  sending.value = true;
  const answer = await ask('/api/v1/session', { method: 'POST', json: { token: secret } });
  sending.value = false;
  if (!answer.ok) {
    fault.value = answer.status === 401 ? words.gate.wrong : answer.problem.detail;
    return;
  }
  token.value = '';
  fault.value = '';
  note(true);
  signInWanted.value = false;
  openPlant();
}

export function SignIn() {
  const t = words.gate;
  return (
    <form class="gate" onSubmit={(event) => void enter(event)}>
      <h1 tabIndex={-1}>{t.title}</h1>
      <p>{t.why}</p>
      <label for="token">{t.token}</label>
      <input
        id="token"
        type="password"
        autocomplete="current-password"
        spellcheck={false}
        value={token.value}
        aria-invalid={fault.value !== ''}
        aria-describedby="token-fault"
        onInput={(event) => {
          token.value = event.currentTarget.value;
        }}
      />
      <p id="token-fault" class="fault" role="alert">
        {fault.value}
      </p>
      <button type="submit" class="act act-first" disabled={sending.value}>
        {t.enter}
      </button>
    </form>
  );
}
