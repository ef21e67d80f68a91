import { useEffect, useState } from 'preact/hooks';
import { ask } from '../../server/ask.js';
import type { Plan } from '../../server/shapes.js';
import { SideDrawing } from '../../sheet/side-drawing.js';
import { words } from '../../words/index.js';

/** The sheets of the plan, front and back as they lie for their pass. A plan does not change once it is made. */
export function Sheets({ ticketId }: { ticketId: string }) {
  const t = words.sheet;
  const [plan, setPlan] = useState<Plan | null | 'none'>(null);
  useEffect(() => {
    setPlan(null);
    void ask<Plan>(`/api/v1/tickets/${encodeURIComponent(ticketId)}/plan`).then((answer) =>
      setPlan(answer.ok ? answer.value : 'none'),
    );
  }, [ticketId]);
  return (
    <section aria-labelledby="sheets-title">
      <h2 id="sheets-title">{words.job.sheets}</h2>
      {plan === null && <p class="quiet">{words.board.loading}</p>}
      {plan === 'none' && <p class="quiet">{words.job.noSheets}</p>}
      {plan !== null &&
        plan !== 'none' &&
        plan.sheets.map((sheet) => (
          <div class="sheet-pair" key={sheet.name}>
            <h3>{sheet.name}</h3>
            <p>
              {t.caption(
                sheet.sheetWidthMm,
                sheet.sheetHeightMm,
                sheet.stock,
                t.styles[sheet.workStyle] ?? sheet.workStyle,
              )}
              , {t.grain(sheet.grain)}. {t.counts(sheet.press, sheet.sheetsToPress, sheet.plates)}.{' '}
              <span class="quiet">{t.head}</span>
            </p>
            <div class="sides">
              <SideDrawing sheet={sheet} side="front" />
              {sheet.back.length > 0 && <SideDrawing sheet={sheet} side="back" />}
            </div>
          </div>
        ))}
    </section>
  );
}
