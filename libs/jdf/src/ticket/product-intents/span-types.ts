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
  integerOrInfinity,
  integerRangeList,
  lengthMm,
  lengthRangesMm,
  nmtoken,
  nmtokens,
  number,
  optional,
  rangeListOf,
  shapeMm,
  sizeMm,
  string,
  type ValueOf,
  type ValueType,
} from '../../codec/index.js';
import { base } from '../../elements/base.js';
import { textElement } from '../views/text-element.js';

/** A kind of span: the name in DataType, and what is agreed, preferred, acceptable and offered. */
export interface SpanKind<F> {
  readonly dataType: string;
  readonly fields: F;
}

// None of the standard's lists says which priorities there are.
const priority = { priority: optional('Priority', nmtoken) };

function spanKind<T, R>(dataType: string, value: ValueType<T>, range: ValueType<R>) {
  return {
    dataType,
    fields: {
      ...base,
      ...priority,
      /** Agreed. */
      actual: optional('Actual', value),
      preferred: optional('Preferred', value),
      /** Acceptable to the customer. */
      range: optional('Range', range),
      /** What the supplier can do. */
      offerRange: optional('OfferRange', range),
    },
  };
}

export const durationSpan = spanKind('DurationSpan', durationOrInfinity, durationRange);
export const enumerationSpan = spanKind('EnumerationSpan', nmtoken, nmtokens);
export const integerSpan = spanKind('IntegerSpan', integerOrInfinity, integerRangeList);
export const nameSpan = spanKind('NameSpan', nmtoken, nmtokens);
export const numberSpan = spanKind('NumberSpan', number, doubleRangeList);
export const timeSpan = spanKind('TimeSpan', dateTime, dateTimeRange);
/** Spans of points in the document. */
export const lengthSpan = spanKind('NumberSpan', lengthMm, lengthRangesMm);
export const sizeSpan = spanKind('XYPairSpan', sizeMm, rangeListOf(sizeMm, 2));
export const shapeSpan = spanKind('ShapeSpan', shapeMm, rangeListOf(shapeMm, 3));

const ofOption = spanKind('OptionSpan', boolean, nmtokens);
export const optionSpan = {
  ...ofOption,
  fields: { ...ofOption.fields, detail: optional('Detail', string) },
};

/** Its ranges are elements, since a text may have blanks. */
export const stringSpan = {
  dataType: 'StringSpan',
  fields: {
    ...base,
    ...priority,
    actual: optional('Actual', string),
    preferred: optional('Preferred', string),
    range: children(textElement('Range')),
    offerRange: children(textElement('OfferRange')),
  },
};

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
