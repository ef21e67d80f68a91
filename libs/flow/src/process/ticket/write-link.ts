import { element, type XmlElement } from '#libs/jdf';
import { roundTo } from '#libs/kernel';
import type { LinkAmount, LinkDraft, PartKeys } from '../process-type.js';

/** A link of a node that may stand for several processes in it. */
export interface IndexedLink extends LinkDraft {
  /** Places of the processes in Types that use the resource; empty for all of the node. */
  readonly indexes: readonly number[];
}

/** The link as an element. Planned amounts alone are an attribute; with actual ones they are told apart as Good and Waste. */
export function writeLink(link: IndexedLink, idOf: (key: string) => string): XmlElement {
  const { resource, usage, role, indexes, parts = [], amounts = [], minStatus, orientation } = link;
  const [only] = amounts;
  const plain = amounts.length === 1 && only!.part === undefined && only!.good === undefined;
  const common = parts.length === 1 ? parts[0]! : {};
  return element(
    `${resource.name}Link`,
    {
      rRef: idOf(resource.key),
      Usage: usage,
      ProcessUsage: role,
      CombinedProcessIndex: indexes.length > 0 ? indexes.join(' ') : undefined,
      Amount: plain && only!.planned !== undefined ? rounded(only!.planned) : undefined,
      MinStatus: minStatus,
      Orientation: orientation,
    },
    [...(plain ? [] : amountPool(amounts, common)), ...parts.map((part) => element('Part', part))],
  );
}

/** Amounts by part, good and waste apart. Nothing for no amounts. */
export function amountPool(amounts: readonly LinkAmount[], common: PartKeys = {}): readonly XmlElement[] {
  const made = amounts.flatMap((amount) => partAmounts(amount, common));
  return made.length === 0 ? [] : [element('AmountPool', {}, made)];
}

function partAmounts({ planned, good, waste, part }: LinkAmount, common: PartKeys): readonly XmlElement[] {
  const keys = { ...common, ...part };
  const Amount = planned === undefined ? undefined : rounded(planned);
  if (good === undefined) return [element('PartAmount', { Amount }, [element('Part', keys)])];
  const of = (Condition: string) => [element('Part', { ...keys, Condition })];
  return [
    element('PartAmount', { Amount, ActualAmount: rounded(good) }, of('Good')),
    ...((waste ?? 0) > 0 ? [element('PartAmount', { ActualAmount: rounded(waste!) }, of('Waste'))] : []),
  ];
}

// Binary fractions of a kilogram are cut at the milligram, which no scale in the hall shows.
const rounded = (amount: number): number => roundTo(amount, 6);
