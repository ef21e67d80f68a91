import type { Ticket } from '../server/shapes.js';
import { words } from '../words/index.js';
import { stepWord } from '../words/steps.js';
import { shareDone } from './lay-strips.js';

const WIDTH = 300;
const HEIGHT = 22;
const GAP = 3;
const LEAST = 10;

/** The steps of one job side by side, as wide as they are planned, for a window too narrow for a time line. */
export function BeadsDrawing({ ticket }: { ticket: Ticket }) {
  const planned = ticket.steps.map((step) => Math.max(1, step.setupS + step.runS));
  const total = planned.reduce((sum, s) => sum + s, 0);
  const room = WIDTH - GAP * (ticket.steps.length - 1) - LEAST * ticket.steps.length;
  let x = 0;
  const told = ticket.steps.map((step) => `${stepWord(step)} ${words.step[step.status] ?? step.status}`);
  return (
    <svg
      class="beads"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={words.board.drawing(ticket.name, told.join('; '))}
    >
      {ticket.steps.map((step, at) => {
        const width = LEAST + (room * planned[at]!) / total;
        const left = x;
        x += width + GAP;
        const share = step.status === 'Completed' ? 1 : shareDone(step);
        const waits = step.status === 'Waiting' || step.status === 'Ready';
        const state = share === 1 ? 'done' : waits ? 'waiting' : 'running';
        const ground = step.status === 'Aborted' ? 'url(#crossed)' : waits ? 'url(#hatch)' : undefined;
        return (
          <g key={step.id} class={`segment segment-${state}`}>
            <rect class="segment-ground" x={left} width={width} height={HEIGHT} fill={ground} />
            <rect class="segment-fill" x={left} width={width * share} height={HEIGHT} />
            <rect class="segment-line" x={left + 0.75} y="0.75" width={width - 1.5} height={HEIGHT - 1.5} />
          </g>
        );
      })}
    </svg>
  );
}
