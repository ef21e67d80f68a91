import type { XmlElement } from '../xml/index.js';

/** A value of the older generation beside the one that says the same in the newer; `'~'`: the newer is only the nearest. */
export type ValuePair = readonly [jdf: string, xjdf: string, nearest?: '~'];

export interface AttributePair {
  readonly jdf: string;
  readonly xjdf: string;
  readonly values?: readonly ValuePair[];
}

/**
 * Where an element differs between the generations. What is not said here goes by the schemas: what has the same name
 * and fits the type of the other side crosses over, the rest is listed as lost.
 */
export interface Row {
  readonly jdf: string;
  readonly xjdf: string;
  readonly attributes?: readonly AttributePair[];
  /** What the newer requires and the older need not say: the standard's neutral value. */
  readonly fill?: Readonly<Record<string, string>>;
  /** The same the other way. */
  readonly fillOlder?: Readonly<Record<string, string>>;
  /** The attribute that refers to a sub-resource of this name, where its name is another. */
  readonly refs?: (child: XmlElement, target: XmlElement) => string | undefined;
}

/** A row; of one name where the newer has none of its own. */
export const row = (jdf: string, xjdf = jdf, rest: Omit<Row, 'jdf' | 'xjdf'> = {}): Row => ({
  jdf,
  xjdf,
  ...rest,
});

/** An attribute with another name or other values in the newer generation; '' where it has none. */
export const renamed = (jdf: string, xjdf: string, values?: readonly ValuePair[]): AttributePair => ({
  jdf,
  xjdf,
  ...(values && { values }),
});
