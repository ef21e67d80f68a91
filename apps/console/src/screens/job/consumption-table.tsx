import type { Consumption } from '../../server/shapes.js';
import { words } from '../../words/index.js';
import { amountWords, differenceWords } from './amounts.js';
import { useListing } from './use-listing.js';

/** What each step was to use and has used, line by line. */
export function ConsumptionTable({ ticketId, revision }: { ticketId: string; revision: number }) {
  const t = words.job;
  const items = useListing<Consumption>(
    `/api/v1/tickets/${encodeURIComponent(ticketId)}/consumption`,
    revision,
  );
  return (
    <section aria-labelledby="consumption-title">
      <h2 id="consumption-title">{t.consumption}</h2>
      {items === null && <p class="quiet">{words.board.loading}</p>}
      {items?.length === 0 && <p class="quiet">{t.noConsumption}</p>}
      {items !== null && items.length > 0 && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone is scrolled by keyboard too (WCAG 2.1.1)
        <section class="wide" aria-label={t.table} tabIndex={0}>
          <table>
            <thead>
              <tr>
                <th scope="col">{t.resource}</th>
                <th scope="col">{t.step}</th>
                <th scope="col" class="number">
                  {t.planned}
                </th>
                <th scope="col" class="number">
                  {t.used}
                </th>
                <th scope="col" class="number">
                  {t.lost}
                </th>
                <th scope="col" class="number">
                  {t.diff}
                </th>
              </tr>
            </thead>
            <tbody>
              {items.map((row) => (
                <tr key={`${row.step} ${row.resource}`}>
                  <th scope="row">{row.resource}</th>
                  <td>
                    {row.step} <span class="quiet">{words.source[row.source] ?? row.source}</span>
                  </td>
                  <td class="number">{amountWords(row.planned, row.unit)}</td>
                  <td class="number">{amountWords(row.actual, row.unit)}</td>
                  <td class="number">{amountWords(row.waste, row.unit)}</td>
                  <td class="number">{differenceWords(row)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      )}
    </section>
  );
}
