/**
 * What is ordered: the JSON order that anybody may send. A ticket of the standard is translated into the
 * same shape, so that only one thing is planned.
 */

/** The standard's names of ways to bind; `None` is flat or only folded work. */
export const bindings = [
  'None',
  'SaddleStitch',
  'SoftCover',
  'HardCover',
  'SideStitch',
  'ThreadSewing',
] as const;
export type Binding = (typeof bindings)[number];

/** One fold in the standard's words: the part between the named edge and the crease is laid over the rest. */
export interface FoldStep {
  from: 'Front' | 'Left';
  to: 'Up' | 'Down';
  /** Distance of the crease from that edge of the piece as it lies. */
  travelMm: number;
}

export interface CoverOrder {
  stock: string;
  pages: 4;
  inksFront: string[];
  inksBack: string[];
}

export interface VersionOrder {
  name: string;
  quantity: number;
  /** Inks whose plate differs from the first version. */
  changes: string[];
}

export interface DeliveryOrder {
  quantity: number;
  /** RFC 3339. */
  due: string;
  place: string;
  packing?: string;
}

export interface Order {
  jobId: string;
  name: string;
  quantity: number;
  /** Closed, finished size. */
  trimWidthMm: number;
  trimHeightMm: number;
  /** Pages of the body; both sides of a leaf count, a poster printed on one side is 1. */
  pages: number;
  binding: Binding;
  foldCatalog?: string;
  folds?: FoldStep[];
  stock: string;
  inksFront: string[];
  inksBack: string[];
  /** The plant's default where left out. */
  bleedMm?: number;
  cover?: CoverOrder;
  versions?: VersionOrder[];
  /** Further quantities to be priced. */
  runs?: number[];
  deliveries?: DeliveryOrder[];
  overDeliveryPct?: number;
  underDeliveryPct?: number;
  /** RFC 3339. */
  due?: string;
  /** 0 to 100, the standard's default is 50. */
  priority?: number;
  customer?: string;
  files?: string[];
}

/** An order as a ticket gives it: what the plant's `defaults` may fill is optional. */
export type OrderDraft = Omit<Order, 'binding' | 'stock' | 'inksFront' | 'inksBack'> &
  Partial<Pick<Order, 'binding' | 'stock' | 'inksFront' | 'inksBack'>>;
