import { signedIn, signOut } from './gate/sign-in.js';
import { pictureAgeS, plant, plantNow } from './live/index.js';
import { chooseTheme, theme, themes } from './look/theme.js';
import { screens } from './screens/index.js';
import { signInWanted } from './server/ask.js';
import { agoWords, dayWords, hourWords } from './time/phrases.js';
import { words } from './words/index.js';

/** Real seconds without a word from the server after which the picture counts as old although the stream seems open. */
const OLD_S = 30;

/** Where one is, the plant's own time, and how far the picture can be trusted. */
export function Masthead({ screen }: { screen: string }) {
  return (
    <header class="masthead">
      <p class="product">{words.product}</p>
      <nav aria-label={words.nav.label}>
        {screens.map(({ name, nav }) =>
          nav === undefined ? null : (
            <a key={name} href={nav.address} aria-current={name === screen ? 'page' : undefined}>
              {nav.word}
            </a>
          ),
        )}
      </nav>
      {!signInWanted.value && <PlantClock />}
      <div class="tools">
        {!signInWanted.value && <LinkState />}
        <label class="theme">
          <span class="unseen">{words.theme.label}</span>
          <select
            value={theme.value}
            onChange={(event) => chooseTheme(event.currentTarget.value as (typeof themes)[number])}
          >
            {themes.map((choice) => (
              <option key={choice} value={choice}>
                {words.theme[choice]}
              </option>
            ))}
          </select>
        </label>
        {signedIn.value && !signInWanted.value && (
          <button type="button" class="act act-small" onClick={() => void signOut()}>
            {words.gate.leave}
          </button>
        )}
      </div>
      {!signInWanted.value && <Cut />}
    </header>
  );
}

function PlantClock() {
  const now = plantNow.value;
  const factor = plant().clockFix.value?.factor ?? 1;
  return (
    <p class="plant-clock">
      <span class="unseen">{words.clock.plant}: </span>
      {now === null ? (
        <span class="quiet">{words.clock.unknown}</span>
      ) : (
        <>
          <span class="plant-day">{dayWords(now)}</span> <span class="plant-hour">{hourWords(now)}</span>
          {factor !== 1 && <span class="plant-factor"> {words.clock.factor(factor)}</span>}
        </>
      )}
    </p>
  );
}

const isCut = (): boolean => plant().link.value === 'cut' || pictureAgeS.value > OLD_S;

function LinkState() {
  const { link } = plant();
  if (isCut()) return null;
  const live = link.value === 'live';
  return (
    <p class="link-state" data-link={link.value}>
      <svg viewBox="0 0 20 20" class="state-shape" aria-hidden="true">
        <circle class={live ? 'mark-spot' : 'mark-line'} cx="10" cy="10" r="6" />
      </svg>
      {live ? words.link.live : words.link.opening}
    </p>
  );
}

/** Said loudly, once: the picture on the screen is no longer the hall. */
function Cut() {
  const { health } = plant();
  const because = health.value?.status === 'notReady' ? health.value.because : [];
  return (
    <div role="status" class="alarm-place">
      {isCut() && (
        <p class="alarm">
          <strong>{words.link.cut(agoWords(0, pictureAgeS.value * 1000))}</strong> {words.link.again}
        </p>
      )}
      {because.length > 0 && <p class="alarm">{words.link.notReady(because.join('; '))}</p>}
    </div>
  );
}
