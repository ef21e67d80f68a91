import {
  boolean,
  child,
  children,
  dateTime,
  dateTimeRange,
  doubleRangeList,
  durationOrInfinity,
  durationRange,
  type ElementCodec,
  elementCodec,
  type Field,
  type Fields,
  type Findings,
  integerOrInfinity,
  integerRangeList,
  lengthMm,
  lengthRangesMm,
  nmtoken,
  nmtokens,
  number,
  optional,
  type Range,
  rangeListOf,
  shapeMm,
  sizeMm,
  string,
  type ValueOf,
  type ValueType,
} from '../../codec/index.js';
import { base } from '../../elements/base.js';
import type { XmlElement } from '../../xml/index.js';
import { textElement } from '../views/text-element.js';

/** A kind of span: the name in DataType, and what is agreed, preferred, acceptable and offered. */
export interface SpanKind<F> {
  readonly dataType: string;
  readonly fields: F;
}

/** The same, of values of a kind. */
export interface SpanOf<T, R, F> extends SpanKind<F> {
  readonly actual: Field<T>;
  readonly preferred: Field<T>;
  readonly range: Field<R>;
  /** The first value of a range. */
  readonly first: (range: R) => T | undefined;
}

// None of the standard's lists says which priorities there are.
const priority = { priority: optional('Priority', nmtoken) };

function spanKind<T, R>(
  dataType: string,
  value: ValueType<T>,
  range: ValueType<R>,
  first: (range: R) => T | undefined,
) {
  const stated = {
    /** Agreed. */
    actual: optional('Actual', value),
    preferred: optional('Preferred', value),
    /** Acceptable to the customer. */
    range: optional('Range', range),
  };
  return {
    dataType,
    ...stated,
    first,
    /** The offer is what the supplier can do. */
    fields: { ...base, ...priority, ...stated, offerRange: optional('OfferRange', range) },
  };
}

const firstOf = <T>(values: readonly T[]): T | undefined => values[0];
const fromOf = <T>(range: Range<T>): T => range.from;
const fromFirst = <T>(ranges: readonly Range<T>[]): T | undefined => ranges[0]?.from;
const none = (): undefined => undefined;

export const durationSpan = spanKind('DurationSpan', durationOrInfinity, durationRange, fromOf);
export const enumerationSpan = spanKind('EnumerationSpan', nmtoken, nmtokens, firstOf);
export const integerSpan = spanKind('IntegerSpan', integerOrInfinity, integerRangeList, fromFirst);
export const nameSpan = spanKind('NameSpan', nmtoken, nmtokens, firstOf);
export const numberSpan = spanKind('NumberSpan', number, doubleRangeList, fromFirst);
export const timeSpan = spanKind('TimeSpan', dateTime, dateTimeRange, fromOf);
/** Spans of points in the document. */
export const lengthSpan = spanKind('NumberSpan', lengthMm, lengthRangesMm, fromFirst);
export const sizeSpan = spanKind('XYPairSpan', sizeMm, rangeListOf(sizeMm, 2), fromFirst);
export const shapeSpan = spanKind('ShapeSpan', shapeMm, rangeListOf(shapeMm, 3), fromFirst);

const ofOption = spanKind('OptionSpan', boolean, nmtokens, none);
export const optionSpan = {
  ...ofOption,
  fields: { ...ofOption.fields, detail: optional('Detail', string) },
};

const ofTexts = {
  actual: optional('Actual', string),
  preferred: optional('Preferred', string),
  range: children(textElement('Range')),
};

/** Its ranges are elements, since a text may have blanks. */
export const stringSpan = {
  dataType: 'StringSpan',
  ...ofTexts,
  first: firstOf<string>,
  fields: { ...base, ...priority, ...ofTexts, offerRange: children(textElement('OfferRange')) },
};

/**
 * The value of a span: what was agreed, else what is preferred, else the first of what is acceptable. Undefined where
 * nothing is said or it cannot be read; the latter is a finding.
 */
export function spanValue<T, R, F>(
  span: XmlElement,
  kind: SpanOf<T, R, F>,
  findings: Findings,
): T | undefined {
  const stated = kind.actual.read(span, findings) ?? kind.preferred.read(span, findings);
  if (stated !== undefined) return stated;
  const range = kind.range.read(span, findings);
  return range === undefined ? undefined : kind.first(range);
}

/** One span of a kind. */
export function spanCodec<F>(name: string, { dataType, fields }: SpanKind<F>): ElementCodec<ValueOf<F>> {
  return elementCodec(name, fields, { DataType: dataType });
}

type SpanFields<N extends string, F, Unit extends string> = {
  readonly [K in N as `${Uncapitalize<K>}${Unit}`]: Field<ValueOf<F>, false>;
};

/** Spans of one kind by their element names; in the view they begin with a small letter. */
export function spans<F, const N extends string>(
  kind: SpanKind<F>,
  ...names: readonly N[]
): SpanFields<N, F, ''> {
  return spansIn('', kind, ...names);
}

/** The same with a unit at the end of the names in the view. */
export function spansIn<F, const N extends string, const Unit extends string>(
  unit: Unit,
  kind: SpanKind<F>,
  ...names: readonly N[]
): SpanFields<N, F, Unit> {
  const fields: Fields = Object.fromEntries(
    names.map((name) => [
      `${name.charAt(0).toLowerCase()}${name.slice(1)}${unit}`,
      child(spanCodec(name, kind)) as Field<unknown>,
    ]),
  );
  return fields as SpanFields<N, F, Unit>;
}
