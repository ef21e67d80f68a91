import type { Binding, Order, OrderDraft, Plant } from '#libs/craft';
import type { Placed, ProductIntent, Size } from '#libs/jdf';
import {
  done,
  error,
  hasErrors,
  isoTime,
  type Problem,
  type Result,
  refuse,
  roundTo,
  warning,
} from '#libs/kernel';
import { chooseStock } from './choose-stock.js';
import { orderSchema } from './order-schema.js';

/** Names of ways to bind that are not ours but mean the same (JDF BindingType, from memory). */
const BINDINGS: Readonly<Record<string, Binding>> = {
  None: 'None',
  SaddleStitch: 'SaddleStitch',
  SoftCover: 'SoftCover',
  Adhesive: 'SoftCover',
  HardCover: 'HardCover',
  SideStitch: 'SideStitch',
  ThreadSewing: 'ThreadSewing',
  Sewn: 'ThreadSewing',
};

/**
 * The order that a product node of a ticket means. What it leaves open comes from the plant's defaults, each with a
 * DEFAULT_TAKEN warning that names the place in the ticket. Errors: JDF_MISSING (JobID, pages, size), PLAN_NOT_YET (parts
 * of a product, other ways to bind), PLAN_IMPOSSIBLE (no such paper in the plant).
 */
export function orderFromProduct(product: ProductIntent, plant: Plant): Result<Order> {
  const problems: Problem[] = [...missing(product)];
  const { defaults } = plant;
  const at = where(product.node);
  const taken = <T>(value: T | undefined, what: string, otherwise: T, words: string): T => {
    if (value !== undefined) return value;
    problems.push(
      warning('DEFAULT_TAKEN', `The ticket names no ${what}; the plant's default is taken: ${words}.`, at),
    );
    return otherwise;
  };
  const pages = product.pages?.value ?? 0;
  const size = trimmedSize(product, pages, problems);
  if (hasErrors(problems) || size === undefined) return refuse(...problems);
  const byPages = defaults.binding[pages === 1 ? 'onePage' : pages === 2 ? 'twoPages' : 'more'];
  const inksBack = pages === 1 ? [] : defaults.inksBack;
  const binding = taken(bindingOf(product, problems), 'binding', byPages, byPages);
  const jobId = product.jobId!.value;
  const draft: OrderDraft = {
    jobId,
    name: product.descriptiveName?.value ?? product.customerJobName?.value ?? jobId,
    quantity: product.amount.value,
    trimWidthMm: roundTo(size.widthMm, 3),
    trimHeightMm: roundTo(size.heightMm, 3),
    pages,
    binding,
    // A fold code of bound work is the plan's own affair: it says how sections are folded, not what the product is.
    foldCatalog: binding === 'None' ? product.foldCatalog?.value : undefined,
    inksFront: taken(
      list(product.inksFront),
      'inks for the front',
      defaults.inksFront,
      defaults.inksFront.join(', '),
    ),
    inksBack:
      pages === 1
        ? []
        : taken(list(product.inksBack), 'inks for the back', inksBack, inksBack.join(', ') || 'none'),
    bleedMm: taken<number | undefined>(undefined, 'bleed', defaults.bleedMm, `${defaults.bleedMm} mm`),
    due: product.due && isoTime(product.due.value),
    priority: product.jobPriority?.value,
    customer: product.customerName?.value,
  };
  if (hasErrors(problems)) return refuse(...problems);
  const stock = chooseStock(product, draft, plant);
  if (!stock.ok) return refuse(...problems, ...stock.problems);
  const order: Order = { ...(draft as Omit<Order, 'stock'>), stock: stock.value };
  const whole = withoutGaps(order);
  const beyond = beyondLimits(whole, product);
  return beyond.length > 0 ? refuse(...problems, ...beyond) : done(whole, [...problems, ...stock.problems]);
}

/** What an order of this plant's own form would be refused for: a ticket may say no more than that. */
function beyondLimits(order: Order, product: ProductIntent): Problem[] {
  const places: Readonly<Record<string, Placed<unknown> | undefined>> = {
    pages: product.pages,
    quantity: product.amount,
  };
  const checked = orderSchema.safeParse(order);
  return (checked.error?.issues ?? []).map(({ path, message }) => {
    const field = String(path[0] ?? '');
    return error('ORDER_FIELD', `The ticket's ${field} cannot be planned. ${message}.`, {
      ...where(places[field] ?? product.node),
      hint: `Correct what the ticket says of ${field}.`,
    });
  });
}

/** Where a value stands in the ticket, as problems name it. */
export function where({ line, path }: Placed<unknown>): { line: number | null; path: string } {
  return { line, path };
}

function missing(product: ProductIntent): readonly Problem[] {
  const at = where(product.node);
  const found: Problem[] = [];
  if (!product.jobId?.value) {
    found.push(
      error('JDF_MISSING', 'The ticket has no JobID.', {
        ...at,
        hint: 'Give the root node a JobID: devices report under it.',
      }),
    );
  }
  if (product.pages === undefined || product.pages.value < 1) {
    found.push(
      error('JDF_MISSING', 'The ticket does not say how many pages there are.', {
        ...(product.pages ? where(product.pages) : at),
        hint: 'Give LayoutIntent a Pages span; both sides of a leaf count.',
      }),
    );
  }
  const [part] = product.children;
  if (part !== undefined) {
    found.push(
      error(
        'PLAN_NOT_YET',
        'A product that is put together from parts, such as a cover, cannot be planned yet.',
        {
          ...where(part.node),
          hint: 'Send body and cover as two tickets.',
        },
      ),
    );
  }
  return found;
}

/**
 * The closed, trimmed size. Where only the flat size is named: with more than four pages it is the page (so in the
 * sample product ticket of the JDF samples); up to two pages nothing is folded; three or four pages are one sheet folded at its spine.
 */
function trimmedSize(product: ProductIntent, pages: number, problems: Problem[]): Size | undefined {
  if (product.finishedDimensionsMm !== undefined) return product.finishedDimensionsMm.value;
  const flat = product.dimensionsMm;
  if (flat === undefined) {
    problems.push(
      error('JDF_MISSING', 'The ticket does not say how large the product is.', {
        ...where(product.node),
        hint: 'Give LayoutIntent FinishedDimensions (points: width, height, thickness).',
      }),
    );
    return undefined;
  }
  if (pages !== 3 && pages !== 4) return flat.value;
  problems.push(
    warning(
      'DEFAULT_TAKEN',
      'The ticket names only the flat size; one fold in the middle of its width is assumed.',
      {
        ...where(flat),
        hint: 'Give LayoutIntent FinishedDimensions.',
      },
    ),
  );
  return { widthMm: flat.value.widthMm / 2, heightMm: flat.value.heightMm };
}

function bindingOf({ bindingType }: ProductIntent, problems: Problem[]): Binding | undefined {
  if (bindingType === undefined) return undefined;
  const known = Object.hasOwn(BINDINGS, bindingType.value) ? BINDINGS[bindingType.value] : undefined;
  if (known === undefined) {
    problems.push(
      error('PLAN_NOT_YET', `BindingType "${bindingType.value}" cannot be planned.`, {
        ...where(bindingType),
        hint: `Possible are ${Object.keys(BINDINGS).join(', ')}.`,
      }),
    );
  }
  return known;
}

const list = (inks: Placed<readonly string[]> | undefined): string[] | undefined =>
  inks === undefined ? undefined : [...inks.value];

/** Without the fields that the ticket does not fill, so that an order from a ticket looks like one from a form. */
function withoutGaps(order: Order): Order {
  return Object.fromEntries(
    Object.entries(order).filter(([, value]) => value !== undefined),
  ) as unknown as Order;
}
