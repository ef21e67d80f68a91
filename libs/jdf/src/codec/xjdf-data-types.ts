import { floatCmykColor, floatLabColor, floatSrgbColor } from './colours.js';
import { listOf, matching, only } from './combine.js';
import { countryCode } from './data-types.js';
import { plainDuration } from './durations.js';
import { curveOf, floatMatrix, floatRectangle, floatShape, floatXyPair } from './geometry.js';
import { booleanOrDigit, float, int32, int64, within } from './numbers.js';
import { plainDateTime } from './stated-time.js';
import { anyHexBinary, anyId, anyToken, anyTokens, ids, text, tokens } from './texts.js';
import { anyUrl } from './uri.js';
import type { ValueType } from './value-type.js';
import { webColor } from './web-colours.js';

const integerPair: ValueType<{ readonly from: number; readonly to: number }> = {
  expects: 'the first and the last whole number, separated by a blank',
  read(value) {
    const [from, to] = listOf(int32, { exactly: 2 }).read(value) ?? [];
    return from === undefined || to === undefined ? undefined : { from, to };
  },
  write: ({ from, to }) => `${from} ${to}`,
};

/**
 * Every attribute type of XJDF and XJMF that is no list of names, by the name that the standard's schema gives it: W3C
 * types with xs:, the last ones by their attribute. Source: the official XJDF 2.3 schema.
 */
export const xjdfDataTypes = {
  'xs:string': text,
  'xs:boolean': booleanOrDigit,
  'xs:float': float,
  'xs:int': int32,
  'xs:long': int64,
  'xs:dateTime': plainDateTime,
  'xs:duration': plainDuration,
  'xs:NMTOKEN': anyToken,
  'xs:NMTOKENS': anyTokens,
  'xs:ID': anyId,
  'xs:IDREF': anyId,
  'xs:IDREFS': ids,
  'xs:anyURI': anyUrl,
  'xs:hexBinary': anyHexBinary,
  FloatList: listOf(float),
  IntegerList: listOf(int32),
  IntegerRange: integerPair,
  Percentage: within(float, 0, 100),
  Score: within(int32, 0, 100),
  Use: within(float, 0, 1),
  XYPair: floatXyPair,
  shape: floatShape,
  rectangle: floatRectangle,
  matrix: floatMatrix,
  TransferFunction: curveOf(float),
  CMYKColor: floatCmykColor,
  LabColor: floatLabColor,
  sRGBColor: floatSrgbColor,
  NamedColor: webColor,
  FoldCatalog: matching(/^F[0-9]+-([0-9]+|X)$/, 'a code of the fold catalogue, such as F16-6'),
  URL: anyUrl,
  language: text,
  languages: tokens,
  PDFPath: text,
  regExp: text,
  XPath: text,
  textElement: text,
  CountryCode: countryCode,
  ChildRefs: listOf(anyId, { atLeast: 2 }),
  CommonFolds: only(int32, (value) => value >= 2, 'a whole number from 2'),
} satisfies Record<string, ValueType<unknown>>;
