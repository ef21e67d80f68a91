import type { PlanSheet, Side } from '#libs/craft';
import { words } from '../words/index.js';
import { cellShape, grippedAt, pagesFromGripper } from './sheet-geometry.js';

const MARGIN_MM = 16;

/** One side of a sheet as it lies face up for its pass: page cells with folio and head, gripped edge at the bottom. */
export function SideDrawing({ sheet, side }: { sheet: PlanSheet; side: Side }) {
  const t = words.sheet;
  const cells = sheet[side];
  const { sheetWidthMm: width, sheetHeightMm: height } = sheet;
  const gripped = grippedAt(sheet, side);
  const marks = (sheet.marks ?? []).filter((mark) => mark.side === side);
  const pages = pagesFromGripper(cells).map((page) => (page === 0 ? t.blank : String(page)));
  return (
    <figure class="side">
      <svg
        class="side-drawing"
        viewBox={`${-MARGIN_MM} ${-MARGIN_MM} ${width + 2 * MARGIN_MM} ${height + 3.5 * MARGIN_MM}`}
        role="img"
        aria-label={t.drawing(sheet.name, words.sheet[side], pages.join(', '))}
      >
        <rect class="sheet" width={width} height={height} />
        {gripped.mm > 0 && (
          <rect
            class="sheet-grip"
            y={height - gripped.mm}
            width={width}
            height={gripped.mm}
            fill="url(#hatch)"
          />
        )}
        {marks.map((mark) => (
          <rect
            key={`${mark.kind}${mark.xMm},${mark.yMm}`}
            class="sheet-mark"
            x={mark.xMm}
            y={height - mark.yMm - mark.heightMm}
            width={mark.widthMm}
            height={mark.heightMm}
          />
        ))}
        {cells.map((cell) => {
          const shape = cellShape(cell, height);
          const [x, y] = shape.centre;
          const size = Math.min(shape.widthMm, shape.heightMm) * 0.42;
          const [x1, y1, x2, y2] = shape.head;
          return (
            <g key={`${cell.xMm},${cell.yMm}`}>
              <rect
                class="cell"
                x={shape.xMm}
                y={shape.topMm}
                width={shape.widthMm}
                height={shape.heightMm}
              />
              <line class="cell-head" x1={x1} y1={y1} x2={x2} y2={y2} />
              <text
                class="folio"
                x={x}
                y={y}
                font-size={size}
                text-anchor="middle"
                dominant-baseline="central"
                transform={`rotate(${shape.turnDeg} ${x} ${y})`}
              >
                {cell.page === 0 ? '–' : cell.page}
              </text>
            </g>
          );
        })}
        <text
          class="sheet-word"
          x={width / 2}
          y={height + 1.8 * MARGIN_MM}
          text-anchor="middle"
          font-size={26}
        >
          {t[gripped.edge]} ↓
        </text>
      </svg>
      <figcaption>{words.sheet[side]}</figcaption>
    </figure>
  );
}
