import { spanWords, timeWords } from '../time/phrases.js';
import { words } from '../words/index.js';
import { stepWord } from '../words/steps.js';
import type { Segment, Strip } from './lay-strips.js';
import { boxOf, placeText, slipPath } from './strip-shapes.js';
import { type TimeWindow, xOf } from './time-axis.js';

/** Sizes in rem, so that the drawing grows with the letters of the page. */
const ROW = 2.5;
const ROW_OF_MANY = 1.7;
const PAD = 0.35;
const NOTCH = 0.55;
const REASON = 1.75;
const LETTER = 0.56;

const FILLS = { waiting: 'url(#hatch)', stopped: 'url(#split)', aborted: 'url(#crossed)' } as const;

/** One job on the time line: a slip of paper, notched where it is due, with its steps on it and its waiting in words. */
export function StripDrawing({
  strip,
  window,
  width,
  rem,
  nowMs,
}: {
  strip: Strip;
  window: TimeWindow;
  width: number;
  rem: number;
  nowMs: number;
}) {
  const rowHeight = (strip.rows === 1 ? ROW : ROW_OF_MANY) * rem;
  const slipHeight = strip.rows * rowHeight + 2 * PAD * rem;
  const lines = (strip.gaps.length > 0 ? 1 : 0) + (strip.lateS > 0 ? 1 : 0);
  const height = slipHeight + lines * REASON * rem;
  const letter = LETTER * rem;
  const x = (atMs: number): number => xOf(window, width, atMs);
  const slipEnd = Math.max(strip.endMs ?? nowMs, strip.dueMs === null ? 0 : strip.dueMs + slipTail(window));
  const slip = boxOf(window, width, strip.cameMs, slipEnd, 8);
  const dueX = strip.dueMs === null ? null : x(strip.dueMs);
  return (
    <svg class="strip-drawing" width={width} height={height} role="img" aria-label={tellStrip(strip, nowMs)}>
      {slip !== null && (
        <path class="slip" d={slipPath(slip.x, slip.x + slip.width, slipHeight, dueX, NOTCH * rem)} />
      )}
      {strip.gaps.map((gap) => {
        const box = boxOf(window, width, gap.fromMs, gap.toMs, 0);
        const y = PAD * rem + (gap.row + 0.5) * rowHeight;
        return box === null ? null : (
          <path key={gap.step.id} class="gap-line" d={`M${box.x} ${y} H${box.x + box.width}`} />
        );
      })}
      {strip.segments.map((segment) => (
        <SegmentDrawing
          key={segment.step.id}
          segment={segment}
          ticketId={strip.ticket.id}
          box={boxOf(window, width, segment.fromMs, segment.toMs)}
          fillTo={fillTo(segment, window, width, nowMs)}
          y={PAD * rem + segment.row * rowHeight + 1}
          height={rowHeight - 3}
          letter={letter}
        />
      ))}
      {strip.lateS > 0 && dueX !== null && dueX < width && (
        <path
          class="late-bar"
          d={`M${Math.max(0, dueX)} ${slipHeight + 2} H${Math.min(width, x(strip.endMs!))}`}
        />
      )}
      <line class="now-line" x1={x(nowMs)} x2={x(nowMs)} y1={0} y2={slipHeight} />
      {lines > 0 && <Reasons strip={strip} width={width} letter={letter} top={slipHeight} rem={rem} x={x} />}
    </svg>
  );
}

/** Paper left behind the notch, so that it is cut into something. */
const slipTail = (window: TimeWindow): number => (window.toMs - window.fromMs) / 40;

function SegmentDrawing({
  segment,
  ticketId,
  box,
  fillTo,
  y,
  height,
  letter,
}: {
  segment: Segment;
  ticketId: string;
  box: { x: number; width: number } | null;
  fillTo: number;
  y: number;
  height: number;
  letter: number;
}) {
  if (box === null) return null;
  const { step, state } = segment;
  const word = stepWord(step).length * letter <= box.width - letter ? stepWord(step) : '';
  const filled = Math.max(0, Math.min(box.width, fillTo - box.x));
  const clip = `fill-${ticketId}-${step.id}`.replace(/[^\w-]/g, '_');
  const label = { x: box.x + letter / 2, y: y + height / 2, 'dominant-baseline': 'central' } as const;
  return (
    <g class={`segment segment-${state}`}>
      <title>{`${stepWord(step)}: ${words.step[step.status] ?? step.status}`}</title>
      <rect
        class="segment-ground"
        x={box.x}
        y={y}
        width={box.width}
        height={height}
        fill={state in FILLS ? FILLS[state as keyof typeof FILLS] : undefined}
      />
      <text class="segment-word" {...label}>
        {word}
      </text>
      {filled > 0 && (
        <>
          <clipPath id={clip}>
            <rect x={box.x} y={y} width={filled} height={height} />
          </clipPath>
          <rect class="segment-fill" x={box.x} y={y} width={filled} height={height} />
          <text class="segment-word-on" clip-path={`url(#${clip})`} {...label}>
            {word}
          </text>
        </>
      )}
      <rect class="segment-line" x={box.x} y={y} width={box.width} height={height} />
    </g>
  );
}

/** How far a segment is filled, in pixels from the left edge: done work wholly, running work by its share. */
function fillTo(segment: Segment, window: TimeWindow, width: number, nowMs: number): number {
  const { fromMs, toMs, doneShare, state } = segment;
  if (state === 'waiting') return Number.NEGATIVE_INFINITY;
  // Work is never drawn done beyond now, however good the count.
  const doneMs = Math.min(fromMs + (toMs - fromMs) * doneShare, Math.max(nowMs, fromMs));
  return xOf(window, width, state === 'done' ? toMs : doneMs);
}

/** Under the slip: by how much it is late, where its work ends, and why it waits, from where the waiting begins. */
function Reasons({
  strip,
  width,
  letter,
  top,
  rem,
  x,
}: {
  strip: Strip;
  width: number;
  letter: number;
  top: number;
  rem: number;
  x: (atMs: number) => number;
}) {
  const first = top + 1.3 * rem;
  const gap = strip.gaps[0];
  const late = strip.lateS > 0 ? words.board.late(spanWords(strip.lateS)) : '';
  const lateAt = placeText(late, strip.dueMs === null ? 0 : x(strip.dueMs), width, letter);
  const reason = gap === undefined ? '' : `${stepWord(gap.step)}: ${gap.reason}`;
  const reasonAt = placeText(reason, gap === undefined ? 0 : x(gap.fromMs), width, letter * 0.95);
  return (
    <>
      {late !== '' && (
        <text class="late-word" x={lateAt.x} y={first} text-anchor={lateAt.anchor}>
          {late}
        </text>
      )}
      {reason !== '' && (
        <text
          class="gap-reason"
          x={reasonAt.x}
          y={late === '' ? first : first + REASON * rem * 0.85}
          text-anchor={reasonAt.anchor}
        >
          {reasonAt.text}
        </text>
      )}
    </>
  );
}

/** The strip told in words, for those who do not see it. */
export function tellStrip(strip: Strip, nowMs: number, zone?: string): string {
  const steps = strip.segments.map(
    ({ step }) => `${stepWord(step)} ${words.step[step.status] ?? step.status}`,
  );
  const gaps = strip.gaps.map((gap) => `${stepWord(gap.step)}: ${gap.reason}`);
  const due = strip.dueMs === null ? [] : [words.board.due(timeWords(strip.dueMs, nowMs, zone))];
  const late = strip.lateS > 0 ? [words.board.late(spanWords(strip.lateS))] : [];
  return words.board.drawing(strip.ticket.name, [...steps, ...gaps, ...due, ...late].join('; '));
}
