import { dayWords, hourWords } from '../time/phrases.js';
import { words } from '../words/index.js';
import { type TimeWindow, ticksOf, xOf } from './time-axis.js';

/** Hours along the top and faint lines down through all strips. What it says is in the strips' words too. */
export function AxisDrawing({
  window,
  width,
  rem,
  nowMs,
}: {
  window: TimeWindow;
  width: number;
  rem: number;
  nowMs: number;
}) {
  const offsetMs = -new Date(nowMs).getTimezoneOffset() * 60_000;
  const nowX = xOf(window, width, nowMs);
  const ticks = ticksOf(window, width, 6 * rem, offsetMs).map((tick) => ({
    ...tick,
    x: xOf(window, width, tick.atMs),
  }));
  const nowWord = words.board.now(hourWords(nowMs));
  const flag = (nowWord.length * 0.66 + 1.6) * rem;
  const room = (x: number): boolean =>
    x > 2 * rem && x < width - 2 * rem && (x < nowX - 2.2 * rem || x > nowX + flag + 1.6 * rem);
  return (
    <svg class="axis" aria-hidden="true" width={width} height="100%">
      {ticks.map(({ atMs, day, x }) => (
        <g key={atMs}>
          <line class="tick-line" x1={x} x2={x} y1={2.1 * rem} y2="100%" />
          {room(x) && (
            <text class="tick-word" x={x} y={1.4 * rem} text-anchor="middle">
              {day ? dayWords(atMs) : hourWords(atMs)}
            </text>
          )}
        </g>
      ))}
      <line class="now-line" x1={nowX} x2={nowX} y1={0} y2="100%" />
      <path
        class="now-flag"
        d={`M${nowX} 0 h${flag} l${-0.5 * rem} ${rem} l${0.5 * rem} ${rem} h${-flag} Z`}
      />
      <text class="now-word" x={nowX + 0.5 * rem} y={1.4 * rem}>
        {nowWord}
      </text>
    </svg>
  );
}
