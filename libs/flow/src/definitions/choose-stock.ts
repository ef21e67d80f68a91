import { type Order, type OrderDraft, type Plant, planJob, type Stock } from '#libs/craft';
import type { ProductIntent } from '#libs/jdf';
import { done, error, type Problem, type Result, refuse, warning } from '#libs/kernel';

/** Papers are sold by whole grams; a ticket written in pounds or ounces may miss by less than one. */
const WEIGHT_SLACK_GSM = 1;

/**
 * The paper of a product, as a stock id of the plant. A ticket names a paper by its weight or by its name; coatings alone
 * are no paper, and then the plant's default is taken. Of several sizes and grains the one that makes the job cheapest is
 * taken. Errors: PLAN_IMPOSSIBLE when nothing like it is in the plant.
 */
export function chooseStock(product: ProductIntent, draft: OrderDraft, plant: Plant): Result<string> {
  const { weightGsm, stockBrand, frontCoating } = product;
  const named =
    stockBrand === undefined ? [] : plant.stocks.filter((stock) => isCalled(stock, stockBrand.value));
  const asked = weightGsm ?? (named.length > 0 ? stockBrand : undefined);
  if (asked === undefined) {
    const { line, path } = product.node;
    const { stock } = plant.defaults;
    return done(stock, [
      warning('DEFAULT_TAKEN', `The ticket names no stock; the plant's default is taken: ${stock}.`, {
        line,
        path,
      }),
    ]);
  }
  const place = { line: asked.line, path: asked.path };
  const heavy = (named.length > 0 ? named : plant.stocks).filter(
    (stock) => weightGsm === undefined || Math.abs(stock.gsm - weightGsm.value) <= WEIGHT_SLACK_GSM,
  );
  if (heavy.length === 0) {
    const gsm = [...new Set(plant.stocks.map((stock) => stock.gsm))].sort((a, b) => a - b);
    return refuse(
      error('PLAN_IMPOSSIBLE', `No paper of ${weightGsm?.value} g/m² is in the plant.`, {
        ...place,
        hint: `There are papers of ${gsm.join(', ')} g/m².`,
      }),
    );
  }
  const coated = frontCoating === undefined ? undefined : frontCoating.value !== 'None';
  const fitting = heavy.filter((stock) => coated === undefined || (stock.class !== 'uncoated') === coated);
  const problems: Problem[] =
    fitting.length > 0
      ? []
      : [
          warning(
            'PLAN_CAUTION',
            `There is no ${coated ? 'coated' : 'uncoated'} paper of that weight in the plant.`,
            {
              line: frontCoating!.line,
              path: frontCoating!.path,
            },
          ),
        ];
  return done(cheapest(fitting.length > 0 ? fitting : heavy, draft, plant), problems);
}

/** Our own id is precise; the name that the trade calls it by holds for all its sizes. */
function isCalled(stock: Stock, name: string): boolean {
  return [stock.id, stock.family, stock.name].some((own) => own.toLowerCase() === name.trim().toLowerCase());
}

function cheapest(stocks: readonly Stock[], draft: OrderDraft, plant: Plant): string {
  if (stocks.length === 1) return stocks[0]!.id;
  const priced = stocks.flatMap((stock) => {
    const plan = planJob({ ...(draft as Order), stock: stock.id }, plant);
    return plan.ok ? [{ id: stock.id, amount: plan.value.totals.cost.amount }] : [];
  });
  priced.sort((a, b) => a.amount - b.amount);
  // When the job can be made on none of them, the plan of the first says why.
  return priced[0]?.id ?? stocks[0]!.id;
}
