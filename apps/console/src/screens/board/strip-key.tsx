import { slipPath } from '../../strip/strip-shapes.js';
import { words } from '../../words/index.js';

const W = 64;
const H = 26;

/** What the fills and the notch mean, in words. */
export function StripKey() {
  const t = words.board.keys;
  const kinds = [
    ['done', undefined, 1, t.done],
    ['running', undefined, 0.5, t.running],
    ['waiting', 'url(#hatch)', 0, t.waiting],
    ['stopped', 'url(#split)', 0, t.stopped],
    ['aborted', 'url(#crossed)', 0, t.aborted],
  ] as const;
  return (
    <details class="key">
      <summary>{words.board.key}</summary>
      <ul>
        {kinds.map(([state, ground, share, word]) => (
          <li key={state}>
            <svg width={W} height={H} aria-hidden="true" class={`segment segment-${state}`}>
              <rect class="segment-ground" width={W} height={H} fill={ground} />
              <rect class="segment-fill" width={W * share} height={H} />
              <rect class="segment-line" x="1" y="1" width={W - 2} height={H - 2} />
            </svg>
            {word}
          </li>
        ))}
        <li>
          <svg width={W} height={H} aria-hidden="true">
            <path class="slip" d={slipPath(0, W, H, W / 2, 7)} />
          </svg>
          {t.notch}
        </li>
      </ul>
    </details>
  );
}
