import { useEffect, useRef } from 'preact/hooks';
import { SignIn } from './gate/sign-in.js';
import { Masthead } from './masthead.js';
import { path } from './route.js';
import { screenAt } from './screens/index.js';
import { signInWanted } from './server/ask.js';
import { Patterns } from './strip/patterns.js';
import { words } from './words/index.js';

/** The frame of every screen. A change of screen moves the reader to its heading. */
export function App() {
  const main = useRef<HTMLElement>(null);
  const arrived = useRef(false);
  const { screen, params } = screenAt(path.value);
  const here = path.value;
  useEffect(() => {
    if (arrived.current) main.current?.querySelector('h1')?.focus();
    arrived.current = true;
    scrollTo(0, 0);
  }, [here]);
  return (
    <>
      <button type="button" class="skip" onClick={() => main.current?.focus()}>
        {words.nav.skip}
      </button>
      <Patterns />
      <Masthead screen={screen.name} />
      <main id="main" ref={main} tabIndex={-1}>
        {signInWanted.value ? <SignIn /> : <screen.Show params={params} />}
      </main>
    </>
  );
}
